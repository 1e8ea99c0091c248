import { Button } from "../shared/ui/Button.tsx";
import { Disclosure } from "../shared/ui/Disclosure.tsx";
import { saveFile } from "../shared/ui/save-file.ts";
import reading from "./reading.module.css";
import styles from "./SourceItem.module.css";

interface Props {
  id: string;
  /** CSL-JSON of one item. */
  csl: string;
}

const indented = (json: string): string => {
  try {
    return JSON.stringify(JSON.parse(json), null, 2);
  } catch {
    return json;
  }
};

/** The source as an item for citing programs: to look at, and to keep. */
export const SourceItem = ({ id, csl }: Props) => (
  <section className={`${reading["section"]} ${styles["item"]}`}>
    <h2>To cite it elsewhere</h2>
    <Disclosure summary="The item as CSL-JSON">
      <pre className={styles["json"]}>{indented(csl)}</pre>
    </Disclosure>
    <Button
      onPress={() =>
        saveFile(`${id}.csl.json`, `[${indented(csl)}]\n`, "application/vnd.citationstyles.csl+json")
      }
    >
      Save as CSL-JSON
    </Button>
  </section>
);
