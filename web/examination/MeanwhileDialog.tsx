import { mergePieces } from "#server/domain/merge-pieces/merge-pieces.ts";
import { Button } from "#web/shared/ui/Button.tsx";
import { Dialog } from "#web/shared/ui/Dialog.tsx";
import { useDeeds, useDesk } from "./desk.ts";
import { differences } from "./differences.ts";
import type { Collision } from "./examination-state.ts";
import styles from "./MeanwhileDialog.module.css";
import { takeSides } from "./take-side.ts";

/** Neither side is dropped by a press beside the sheet or by Escape. */
const stayOpen = () => {};

/** Somebody else changed what one has just changed: shows both sides there, and asks which is to stand. */
export function MeanwhileDialog() {
  const { collisions } = useDesk();
  const [first] = collisions;
  return first === undefined ? null : <CollisionDialog collision={first} />;
}

function CollisionDialog({ collision: { base, mine } }: { collision: Collision }) {
  const { piece, stored, decide } = useDesk();
  const { glossary } = useDeeds();
  const labelOf = (term: string) =>
    stored.labels.get(term) ?? glossary.labelOf(term as Parameters<typeof glossary.labelOf>[0]);
  const { conflicts } = mergePieces(base, mine, piece);
  const takeMine = takeSides(conflicts, "mine");
  const different = differences(
    takeMine(piece),
    takeSides(conflicts, "theirs")(piece),
    labelOf,
    takeSides(conflicts, "base")(piece),
  );
  return (
    <Dialog title="Changed elsewhere meanwhile" isOpen role="alertdialog" onOpenChange={stayOpen}>
      {() => (
        <>
          <p>
            Somebody else, or you in another window, changed the same as you. Everything else that you and
            they changed is kept; here one has to stand. If you keep yours, theirs can be had back by undo; if
            you take theirs, yours is dropped.
          </p>
          {different.length === 0 ? (
            <p>Both say the same.</p>
          ) : (
            <table className={styles["sides"]}>
              <thead>
                <tr>
                  <th scope="col">What both changed</th>
                  <th scope="col">Before</th>
                  <th scope="col">Yours</th>
                  <th scope="col">Theirs</th>
                </tr>
              </thead>
              <tbody>
                {different.map(({ of, before, mine, theirs }) => (
                  <tr key={`${of} ${mine} ${theirs}`}>
                    <th scope="row">{of}</th>
                    <td>{before ?? "not there"}</td>
                    <td>{mine ?? "not there"}</td>
                    <td>{theirs ?? "not there"}</td>
                  </tr>
                ))}
              </tbody>
            </table>
          )}
          <p className={styles["buttons"]}>
            <Button look="main" onPress={() => decide(takeMine)}>
              Keep mine
            </Button>
            <Button onPress={() => decide(undefined)}>Take theirs</Button>
          </p>
        </>
      )}
    </Dialog>
  );
}
