/**
 * Says what the program is, what it does not replace, and whose work it uses; here a person also chooses the language
 * of the pane.
 */
import { Button, Field, Link, makeStyles, Select, Text, tokens } from "@fluentui/react-components";
import { useState } from "react";
import project from "../../../../package.json";
import { CATALOGUES, text } from "../../text";
import { choosing } from "../../ui/choosing";
import { ScreenTitle } from "../../ui/parts";
import {
  fileIn,
  keepLanguage,
  keptLanguage,
  language,
  LANGUAGES,
  withLanguage,
  type Language,
} from "../../text/language";

const useStyles = makeStyles({
  column: { display: "flex", flexDirection: "column", gap: "8px" },
  list: { margin: 0, paddingLeft: "18px", display: "flex", flexDirection: "column", gap: "6px" },
  quiet: { color: tokens.colorNeutralForeground2 },
});

const words = text.about;

/** The pages that are built and served together with the pane, in its language. */
const HELP = [
  { page: fileIn("help.html", language()), text: words.helpFunctions },
  { page: fileIn("first-minutes.html", language()), text: words.helpFirst },
];

const Heading = ({ children }: { children: string }) => (
  <Text as="h2" size={300} weight="semibold" block style={{ margin: "8px 0 0" }}>
    {children}
  </Text>
);

/** Saves the choice and loads the pane again. If the browser stores nothing, the choice is put into the address. */
function changeTo(language: Language | undefined): void {
  const kept = keepLanguage(language);
  const next = withLanguage(window.location.href, kept ? undefined : language);
  if (next === window.location.href) window.location.reload();
  else window.location.replace(next);
}

export function AboutScreen() {
  const styles = useStyles();
  const [chosen, setChosen] = useState<Language | "">(() => keptLanguage(window.location.search) ?? "");
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
      <ScreenTitle>{words.heading}</ScreenTitle>
      <Text className={styles.quiet}>{words.version(project.version)}</Text>
      <Text>{words.purpose}</Text>
      <Heading>{words.helpHeading}</Heading>
      {HELP.map(({ page, text }) => (
        <Link key={page} href={page} target="_blank" rel="noopener">
          {text}
        </Link>
      ))}
      <Heading>{words.languageHeading}</Heading>
      <Field label={words.language}>
        <Select value={chosen} onChange={choosing<Language | "">(setChosen)}>
          <option value="">{words.languageOfHost}</option>
          {LANGUAGES.map((language) => (
            <option key={language} value={language} lang={language}>
              {CATALOGUES[language].language}
            </option>
          ))}
        </Select>
      </Field>
      <div>
        <Button aria-describedby="language-hint" onClick={() => changeTo(chosen === "" ? undefined : chosen)}>
          {words.languageUse}
        </Button>
      </div>
      <Text id="language-hint" size={200} className={styles.quiet}>
        {words.languageHint}
      </Text>
      <Heading>{words.privacyHeading}</Heading>
      <Text>{words.privacy}</Text>
      <Heading>{words.cautionsHeading}</Heading>
      {list(words.cautions)}
      <Heading>{words.licencesHeading}</Heading>
      <Text>{words.own}</Text>
      {list(words.parts)}
      <Link href="licences.txt" target="_blank" rel="noopener">
        {words.notices}
      </Link>
    </div>
  );
}
