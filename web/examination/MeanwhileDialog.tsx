import { Button } from "#web/shared/ui/Button.tsx";
import { Dialog } from "#web/shared/ui/Dialog.tsx";
import { useDeeds, useDesk } from "./desk.ts";
import { differences } from "./differences.ts";
import styles from "./MeanwhileDialog.module.css";

/** Neither side is dropped by a press beside the sheet or by Escape. */
const stayOpen = () => {};

/** Somebody else changed the examination: shows both sides where they differ and asks which is to stand. */
export function MeanwhileDialog() {
  const { standing, piece, settle } = useDesk();
  const { glossary } = useDeeds();
  if (standing.kind !== "changed-meanwhile") return null;
  const labelOf = (term: string) =>
    standing.theirs.labels.get(term) ?? glossary.labelOf(term as Parameters<typeof glossary.labelOf>[0]);
  const different = differences(piece, standing.theirs.piece, labelOf);
  return (
    <Dialog title="Changed elsewhere meanwhile" isOpen role="alertdialog" onOpenChange={stayOpen}>
      {() => (
        <>
          <p>
            This examination was changed in another window or by somebody else since you opened it. Your last
            change is not stored yet. If you keep yours, theirs can be had back by undo; if you take theirs,
            your last change is dropped.
          </p>
          {different.length === 0 ? (
            <p>Both say the same.</p>
          ) : (
            <table className={styles["sides"]}>
              <thead>
                <tr>
                  <th scope="col">What differs</th>
                  <th scope="col">Yours</th>
                  <th scope="col">Theirs</th>
                </tr>
              </thead>
              <tbody>
                {different.map(({ of, mine, theirs }) => (
                  <tr key={`${of} ${mine} ${theirs}`}>
                    <th scope="row">{of}</th>
                    <td>{mine ?? "not there"}</td>
                    <td>{theirs ?? "not there"}</td>
                  </tr>
                ))}
              </tbody>
            </table>
          )}
          <p className={styles["buttons"]}>
            <Button look="main" onPress={() => settle("mine")}>
              Keep mine
            </Button>
            <Button onPress={() => settle("theirs")}>Take theirs</Button>
          </p>
        </>
      )}
    </Dialog>
  );
}
