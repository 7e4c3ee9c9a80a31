/** What this is, what it must not be taken for, and whose work it stands on. */
import { makeStyles, Text, tokens } from "@fluentui/react-components";
import project from "../../package.json";
import { text } from "./text";

const useStyles = makeStyles({
  title: { margin: 0 },
  column: { display: "flex", flexDirection: "column", gap: "8px" },
  list: { margin: 0, paddingLeft: "18px", display: "flex", flexDirection: "column", gap: "6px" },
  quiet: { color: tokens.colorNeutralForeground2 },
});

const Heading = ({ children }: { children: string }) => (
  <Text as="h2" size={300} weight="semibold" block style={{ margin: "8px 0 0" }}>
    {children}
  </Text>
);

export function AboutScreen() {
  const styles = useStyles();
  const { about } = text;
  const list = (items: readonly string[]) => (
    <ul className={styles.list}>
      {items.map((item) => (
        <li key={item}>
          <Text>{item}</Text>
        </li>
      ))}
    </ul>
  );
  return (
    <div className={styles.column}>
      <Text as="h1" size={400} weight="semibold" block className={styles.title}>
        {about.heading}
      </Text>
      <Text className={styles.quiet}>{about.version(project.version)}</Text>
      <Text>{about.purpose}</Text>
      <Heading>{about.privacyHeading}</Heading>
      <Text>{about.privacy}</Text>
      <Heading>{about.cautionsHeading}</Heading>
      {list(about.cautions)}
      <Heading>{about.licencesHeading}</Heading>
      <Text>{about.own}</Text>
      {list(about.parts)}
    </div>
  );
}
