import type { Position } from "../shared/apollo/schema-types.graphql.ts";
import { positionWords } from "./position-words.ts";
import styles from "./Sheet.module.css";
import type { SheetSectionFragment } from "./SheetPage.graphql.ts";
import { SheetSection } from "./SheetSection.tsx";

const ROUND: readonly Position[] = ["FRONT", "DRAWERS_OUT", "BACK", "UNDERNEATH"];

const anchorOf = (position: Position): string => position.toLowerCase().replaceAll("_", "-");

/** Links to the positions of a sheet that have anything in them. */
export const PositionLinks = ({ sections }: { sections: readonly SheetSectionFragment[] }) => (
  <nav className={`screen-only ${styles["jump"]}`} aria-label="Round the piece">
    <ul>
      {ROUND.filter((position) => sections.some((section) => section.position === position)).map(
        (position) => (
          <li key={position}>
            <a href={`#${anchorOf(position)}`}>{positionWords[position].title}</a>
          </li>
        ),
      )}
    </ul>
  </nav>
);

/** The sections of a sheet under the positions from which one looks, in the order in which one goes round a piece. */
export const FieldSheet = ({ sections, form }: { sections: readonly SheetSectionFragment[]; form: string }) =>
  ROUND.map((position) => {
    const here = sections.filter((section) => section.position === position);
    if (here.length === 0) return null;
    const { title, how } = positionWords[position];
    return (
      <section key={position} id={anchorOf(position)} className={styles["position"]}>
        <header>
          <h2>{title}</h2>
          <p className={styles["come"]}>{how}</p>
        </header>
        <div className={styles["parts"]}>
          {here.map((section) => (
            <SheetSection key={section.part?.id} section={section} form={form} />
          ))}
        </div>
      </section>
    );
  });
