import { useState } from "react";
import type { EditInWords } from "#server/domain/edit-words.ts";
import { Refusals } from "../shared/asking/Refusals.tsx";
import { useAnswer } from "../shared/asking/use-answer.ts";
import { Differences } from "../shared/history/Differences.tsx";
import { addressAsOf } from "../shared/navigation/asked-revision.ts";
import { Button } from "../shared/ui/Button.tsx";
import { TextLink } from "../shared/ui/TextLink.tsx";
import { Waiting } from "../shared/ui/Waiting.tsx";
import styles from "./chronicle.module.css";
import { sayGroup } from "./say-group.ts";
import type { Two } from "./two-revisions.ts";

interface Said extends EditInWords {
  readonly id: string;
  readonly kind: "term" | "claim" | "source";
}
interface Compared extends Two {
  readonly groups: readonly {
    readonly kind: Said["kind"];
    readonly does: Said["does"];
    readonly count: number;
  }[];
  readonly edits: readonly Said[];
  readonly before: number;
  readonly after: number;
}

/** What the later of two revisions says otherwise, in groups, some at a time. */
export function Difference({ from, to }: Two) {
  const [skip, setSkip] = useState(0);
  const { answer } = useAnswer<Compared>("/chronicle/difference", { from, to, skip });
  if (answer === undefined) return <Waiting what="the difference" />;
  if ("refused" in answer) return <Refusals answer={answer} />;
  const { groups, edits, before, after, ...two } = answer.done;
  return (
    <section className={styles["section"]} aria-labelledby="difference">
      <h2 id="difference">
        From revision {two.from} to revision {two.to}
      </h2>
      <p className={styles["says"]}>
        {groups.length === 0 ? "They say the same." : `${groups.map(sayGroup).join(", ")}.`}
      </p>
      {groups.map(({ kind, does, count }) => {
        const shown = edits.filter((edit) => edit.kind === kind && edit.does === does);
        return shown.length === 0 ? null : (
          <section key={`${kind} ${does}`} aria-label={sayGroup({ kind, does, count })}>
            <h3>{sayGroup({ kind, does, count })}</h3>
            <ul className={styles["list"]}>
              {shown.map(({ id, says, differences }) => (
                <li key={id}>
                  <p className={styles["says"]}>
                    <TextLink to={addressAsOf(`/${kind}s/${id}`, does === "withdrawn" ? two.from : two.to)}>
                      {says}
                    </TextLink>
                  </p>
                  {differences.length === 0 ? null : <Differences differences={differences} later="became" />}
                </li>
              ))}
            </ul>
          </section>
        );
      })}
      <div className={styles["acts"]}>
        {before > 0 ? (
          <Button onPress={() => setSkip(Math.max(0, skip - 50))}>Show those before</Button>
        ) : null}
        {after > 0 ? <Button onPress={() => setSkip(skip + edits.length)}>Show the next</Button> : null}
        {before + after > 0 ? (
          <p className={styles["beside"]}>
            {before + 1} to {before + edits.length} of {before + edits.length + after}
          </p>
        ) : null}
      </div>
    </section>
  );
}
