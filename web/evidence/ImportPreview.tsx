import { useState } from "react";
import type { ReadItem } from "#server/domain/sources-in/read-item.ts";
import { Button } from "../shared/ui/Button.tsx";
import { ImportItem } from "./ImportItem.tsx";
import styles from "./ImportPage.module.css";
import reading from "./reading.module.css";
import { saveCsl } from "./save-sources.ts";

const ITEMS_AT_ONCE = 50;

/** What would become of each entry of a list, and those that would be taken as a file. */
export function ImportPreview({ items }: { items: readonly ReadItem[] }) {
  const [shown, setShown] = useState(ITEMS_AT_ONCE);
  /** Places of entries that seem to be there already and are taken all the same. */
  const [wanted, setWanted] = useState<ReadonlySet<number>>(new Set());
  const refused = items.filter(({ refusals }) => refusals.length > 0).length;
  const taken = items.filter((item) => isTaken(item, wanted));
  return (
    <section className={reading["section"]}>
      <h2>What would become of them</h2>
      <p role="status" className={styles["count"]}>
        {taken.length} of {items.length} would be taken, {items.length - refused - taken.length} there
        already, {refused} refused
      </p>
      <ol className={reading["list"]}>
        {items.slice(0, shown).map((item) => (
          <ImportItem
            key={item.at}
            item={item}
            isWanted={wanted.has(item.at)}
            onWant={(isWanted) =>
              setWanted((before) => {
                const next = new Set(before);
                if (isWanted) next.add(item.at);
                else next.delete(item.at);
                return next;
              })
            }
          />
        ))}
      </ol>
      {items.length > shown ? (
        <p className={reading["more"]}>
          <Button onPress={() => setShown(shown + ITEMS_AT_ONCE)}>Show more</Button> {shown} of {items.length}{" "}
          shown
        </p>
      ) : null}
      {taken.length === 0 ? null : (
        <p className={styles["save"]}>
          <Button
            onPress={() =>
              saveCsl(
                "sources",
                taken.flatMap(({ csl }) => csl ?? []),
              )
            }
          >
            {taken.length === 1
              ? "Save the one that would be taken as CSL-JSON"
              : `Save the ${taken.length} that would be taken as CSL-JSON`}
          </Button>
        </p>
      )}
    </section>
  );
}

const isTaken = ({ at, refusals, standing }: ReadItem, wanted: ReadonlySet<number>): boolean =>
  refusals.length === 0 && (standing === undefined || wanted.has(at));
