import fc from "../properties";
import { create, unitDependencies } from "mathjs";
import { convert, convertUnit, unitNamed, UNITS, unitsOf, type Quantity } from "../../src/reduction/units";

import { MATHJS_UNITS } from "../../src/book/mathjs-units";
import { inEnglish } from "../in-english";

const { unit } = create({ unitDependencies });

const quantities = Object.keys(UNITS) as Quantity[];
const anyPair = fc
  .constantFrom(...quantities)
  .chain((quantity) =>
    fc.tuple(
      fc.constant(quantity),
      fc.constantFrom(...unitsOf(quantity)),
      fc.constantFrom(...unitsOf(quantity)),
      fc.constantFrom(...unitsOf(quantity)),
    ),
  );
const anyValue = fc.double({ min: 1e-9, max: 1e9, noNaN: true });

test("every factor is that of mathjs, which has its own definitions of units", () => {
  for (const quantity of quantities) {
    const names = unitsOf(quantity);
    expect(Object.keys(MATHJS_UNITS[quantity]).sort()).toEqual([...names].sort());
    for (const from of names)
      for (const to of names) {
        const expected = unit(MATHJS_UNITS[quantity][from]).toNumber(
          MATHJS_UNITS[quantity][to].replace(/^[\d.]+ /, ""),
        );
        const scale = parseFloat(MATHJS_UNITS[quantity][to]);
        expect(Math.abs((convert(1, quantity, from, to) * scale) / expected - 1)).toBeLessThan(1e-13);
      }
  }
});

test("a conversion there and back gives the same value, and a detour changes nothing", () => {
  fc.assert(
    fc.property(anyPair, anyValue, ([quantity, a, b, c], value) => {
      const there = convert(value, quantity, a, b);
      expect(Math.abs(convert(there, quantity, b, a) / value - 1)).toBeLessThan(1e-14);
      expect(Math.abs(convert(there, quantity, b, c) / convert(value, quantity, a, c) - 1)).toBeLessThan(1e-14);
    }),
  );
});

test("a unit name means one thing: if two quantities share it, their other units do not clash", () => {
  for (const quantity of quantities)
    for (const name of unitsOf(quantity)) {
      const others = quantities.filter((other) => other !== quantity && unitsOf(other).includes(name));
      expect([name, others]).toEqual([name, []]);
    }
});

test("units are accepted as people type them", () => {
  expect(unitNamed("KPA", unitsOf("stress"))).toBe("kPa");
  expect(unitNamed("mm²/min", unitsOf("cv"))).toBe("mm2/min");
  expect(unitNamed(" m^2 / yr ", unitsOf("cv"))).toBe("m2/yr");
  expect(unitNamed("kN/m³", unitsOf("density"))).toBe("kN/m3");
  expect(unitNamed("m²/year", unitsOf("cv"))).toBe("m2/yr");
  expect(unitNamed("cm2/sec", unitsOf("cv"))).toBe("cm2/s");
  expect(unitNamed("Inches", unitsOf("length"))).toBe("in");
  expect(unitNamed("kg/cm²", unitsOf("stress"))).toBe("kgf/cm2");
  expect(unitNamed("lb", unitsOf("force"))).toBe("lbf");
  expect(["lb/ft²", "lbf/ft^2", "lbs/ft2"].map((typed) => unitNamed(typed, unitsOf("stress")))).toEqual(
    Array(3).fill("psf"),
  );
  expect(unitNamed("LBF/in²", unitsOf("stress"))).toBe("psi");
  expect(unitNamed("lb/ft³", unitsOf("density"))).toBe("pcf");
  expect(unitNamed("lb/ft2", unitsOf("density"))).toBeUndefined();
  expect(unitNamed("kgf", unitsOf("force"))).toBe("kg");
  expect(unitNamed("furlong", unitsOf("length"))).toBeUndefined();
  expect(unitNamed("toString", unitsOf("length"))).toBeUndefined();
});

test("an unknown unit and a unit of another quantity are refused with the accepted units", () => {
  expect(inEnglish(convertUnit(1, "furlong", "mm"))).toMatchObject({
    ok: false,
    fault: "input",
    reason: expect.stringMatching(/"furlong" is not known: use one of .*kPa.*mm/),
  });
  expect(inEnglish(convertUnit(1, "kPa", "mm"))).toMatchObject({
    ok: false,
    reason: expect.stringMatching(/^"mm" does not measure what "kPa" measures: convert it to one of kPa, MPa/),
  });
});
