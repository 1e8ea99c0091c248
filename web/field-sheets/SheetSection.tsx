import { TextLink } from "../shared/ui/TextLink.tsx";
import { SheetEntry } from "./SheetEntry.tsx";
import type { SheetSectionFragment } from "./SheetPage.graphql.ts";
import styles from "./SheetRows.module.css";
import { Ticks } from "./Ticks.tsx";

/** What to look for on one part from one position: in full, then what was told before, then how much is left out. */
export function SheetSection({ section, form }: { section: SheetSectionFragment; form: string }) {
  const { part, entries, again, more } = section;
  if (!part) return null;
  return (
    <section className={styles["part"]}>
      <h3>{part.label}</h3>
      {entries.length > 0 ? (
        <ul className={styles["entries"]}>
          {entries.map((entry) => (
            <SheetEntry key={entry.feature?.id} entry={entry} />
          ))}
        </ul>
      ) : null}
      {again.length > 0 ? (
        <ul className={styles["again"]} aria-label="Here too, told before">
          {again.map(({ id, label }) => (
            <li key={id}>
              <TextLink to={`/terms/${id}`} className={styles["name"] ?? ""}>
                {label}
              </TextLink>
              <Ticks />
            </li>
          ))}
        </ul>
      ) : null}
      {more > 0 ? (
        <p className={`screen-only ${styles["more"]}`}>
          <TextLink to={`/evidence/parts?form=${form}&part=${part.id}`} className={styles["rest"] ?? ""}>
            {more} more {more === 1 ? "tells" : "tell"} something on it
          </TextLink>
        </p>
      ) : null}
    </section>
  );
}
