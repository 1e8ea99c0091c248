import { printBibtex } from "#server/domain/bibtex/print-bibtex.ts";
import type { CslItem } from "#server/domain/source.ts";
import { Button } from "../shared/ui/Button.tsx";
import { Disclosure } from "../shared/ui/Disclosure.tsx";
import { CopyCitation } from "./CopyCitation.tsx";
import reading from "./reading.module.css";
import styles from "./SourceItem.module.css";
import { saveBibtex, saveCsl } from "./save-sources.ts";

interface Props {
  id: string;
  /** The citation as a line of text. */
  text: string;
  /** CSL-JSON of one item. */
  csl: string;
}

/** The source as an item for citing programs: to look at, and to keep. */
export function SourceItem({ id, text, csl }: Props) {
  const item: CslItem = JSON.parse(csl);
  const address = typeof item["DOI"] === "string" ? `https://doi.org/${item["DOI"]}` : item.URL;
  return (
    <section className={`${reading["section"]} ${styles["item"]}`}>
      <h2>To cite it elsewhere</h2>
      <CopyCitation text={address === undefined ? `${text}.` : `${text}, ${address}.`} />
      <Disclosure summary="The item as CSL-JSON">
        <pre className={styles["json"]}>{JSON.stringify(item, null, 2)}</pre>
      </Disclosure>
      <Disclosure summary="The item as BibTeX">
        <pre className={styles["json"]}>{printBibtex([item])}</pre>
      </Disclosure>
      <p className={styles["actions"]}>
        <Button onPress={() => saveCsl(id, [item])}>Save as CSL-JSON</Button>
        <Button onPress={() => saveBibtex(id, [item])}>Save as BibTeX</Button>
      </p>
    </section>
  );
}
