import type { TermKind } from "#server/domain/term.ts";
import styles from "./AroundLegend.module.css";
import type { TermRow } from "./around-row.ts";
import { KindMark } from "./KindMark.tsx";

interface Props {
  kinds: readonly { readonly kind: TermKind; readonly word: string }[];
  looks: ReadonlySet<TermRow["look"]>;
}

const LINES = [
  { look: "hard", name: "physical: it could not be otherwise" },
  { look: "soft", name: "habit or company: usual, not certain" },
  { look: "bare", name: "stated by the term, without a claim" },
] as const;

/** What shapes and lines of a neighbourhood mean, of those that are in it. */
export const AroundLegend = ({ kinds, looks }: Props) => (
  <ul className={styles["legend"]} aria-label="What shapes and lines mean">
    {kinds.map(({ kind, word }) => (
      <li key={kind}>
        <KindMark kind={kind} /> {word}
      </li>
    ))}
    {LINES.filter(({ look }) => looks.has(look)).map(({ look, name }) => (
      <li key={look}>
        <svg width="26" height="8" aria-hidden="true">
          <line x1="0" x2="26" y1="4" y2="4" className={styles[look]} />
        </svg>{" "}
        {name}
      </li>
    ))}
  </ul>
);
