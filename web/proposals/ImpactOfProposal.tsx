import styles from "./Impact.module.css";
import { ImpactStanding } from "./ImpactStanding.tsx";
import { MovedPiece } from "./MovedPiece.tsx";
import { type Impact, useImpact } from "./use-impact.ts";

/** What accepting a proposal would do: worked out anew each time the page is opened, as the evidence stands now. */
export function ImpactOfProposal({ id }: { id: string }) {
  const run = useImpact(id);
  const { standing } = run;
  const known = standing.kind === "told" ? standing.impact : "known" in standing ? standing.known : undefined;
  return (
    <section aria-labelledby="impact" className={styles["wide"]}>
      <h2 id="impact">What accepting it would do</h2>
      <div className={styles["impact"]}>
        <ImpactStanding run={run} />
        <div aria-live={standing.kind === "told" ? "polite" : "off"} className={styles["told"]}>
          {known ? <Told impact={known} /> : null}
        </div>
      </div>
    </section>
  );
}

const piecesOf = (count: number) => (count === 1 ? "1 stored piece" : `${count} stored pieces`);

/** The impact in a sentence. */
function headline({ movedCount, looked, left }: Impact): string {
  if (left > 0)
    return movedCount === 0
      ? `Nothing would be said otherwise of the ${piecesOf(looked)} looked at so far.`
      : `Something would be said otherwise of ${movedCount} of the ${piecesOf(looked)} looked at so far.`;
  if (looked === 0) return "No stored piece rests on what it changes: nothing would be said otherwise.";
  if (movedCount === 0)
    return `Nothing would be said otherwise, though ${piecesOf(looked)} ${looked === 1 ? "rests" : "rest"} on what it changes.`;
  return `Something would be said otherwise of ${piecesOf(movedCount)}.`;
}

function Told({ impact }: { impact: Impact }) {
  const { moved, movedCount, hidden, looked, reviewersNeeded, created, settled, revision } = impact;
  return (
    <>
      <p className={styles["headline"]}>{headline(impact)}</p>
      {reviewersNeeded > 1 ? (
        <p className={styles["two"]}>
          It moves so many conclusions that two reviewers have to agree where several share the house.
        </p>
      ) : null}
      <Disagreements says="It would bring up a disagreement" of={created} />
      <Disagreements says="It would settle a disagreement" of={settled} />
      {created.length + settled.length === 0 ? <p>It brings up no disagreement, and settles none.</p> : null}
      {moved.map((piece, i) => (
        <MovedPiece key={piece.id} piece={piece} isOpenAtFirst={i === 0} />
      ))}
      {movedCount - hidden > moved.length ? (
        <p className={styles["beside"]}>And {piecesOf(movedCount - hidden - moved.length)} more.</p>
      ) : null}
      {hidden > 0 ? (
        <p className={styles["beside"]}>
          {piecesOf(hidden)} of these {hidden === 1 ? "is" : "are"} not shown to you: whoever recorded{" "}
          {hidden === 1 ? "it keeps it" : "them keeps them"} to a few.
        </p>
      ) : null}
      <p className={styles["beside"]}>
        {piecesOf(looked)} examined both ways, over revision {revision}. Nothing was changed by looking.
      </p>
    </>
  );
}

const Disagreements = ({ says, of }: { says: string; of: Impact["created"] }) =>
  of.length === 0 ? null : (
    <div>
      <p>
        {says}
        {of.length > 1 ? `, ${of.length} times` : ""}:
      </p>
      <ul className={styles["disagreements"]}>
        {of.map((one) => (
          <li key={one.id}>{one.says}</li>
        ))}
      </ul>
    </div>
  );
