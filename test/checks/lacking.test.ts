import { lackingNamed } from "../../src/checks/lacking";
import { english } from "../../src/reduction/message";

test("the stress and the strain of inundation have names of their own in the list of what is missing", () => {
  const [stress, strain] = (["inundation_stress", "inundation_strain"] as const).map((name) =>
    english(lackingNamed({ names: [name] })),
  );
  expect(stress).toBe("Inundated under (inundation_stress)");
  expect(strain).toBe("Strain of the inundated load (inundation_strain)");
});
