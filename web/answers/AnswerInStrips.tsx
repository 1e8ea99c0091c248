import { TextLink } from "#web/shared/ui/TextLink.tsx";
import { Waiting } from "#web/shared/ui/Waiting.tsx";
import { DatingStrips } from "#web/strips/DatingStrips.tsx";
import type { StripGroup } from "#web/strips/strip-row.ts";
import styles from "./AnswerInStrips.module.css";
import { sayRows } from "./say-rows.ts";
import type { Answered } from "./use-answer.ts";

interface Props {
  answer: Answered;
  /** Observations whose strips are shown; all of them if it is left out. */
  shows?: readonly string[] | undefined;
  /** Observations whose strips are unfolded from the start. */
  unfolds?: readonly string[];
  /** Also what the marks mean, and the revision it was answered from; once on a page is enough. */
  hasLegend?: boolean;
  /** Observations whose sentences stand above the strips; the headline of the piece if it is left out. */
  tells?: readonly string[] | undefined;
}

const rowsToShow = (groups: readonly StripGroup[], shows: readonly string[] | undefined) =>
  groups
    .map((group) => ({
      ...group,
      rows: group.rows.filter((row) =>
        shows === undefined ? row.observation !== undefined : shows.includes(row.id),
      ),
    }))
    .filter((group) => group.rows.length > 0);

/** What the engine says of a small piece: its sentence, and the strips with their chains and sources. */
export function AnswerInStrips({ answer, shows, unfolds = [], hasLegend = false, tells }: Props) {
  if (answer.kind === "waiting") return <Waiting what="the answer" />;
  if (answer.kind === "failed")
    return (
      <p role="alert" className={styles["none"]}>
        {answer.says}
      </p>
    );
  if (answer.kind === "refused")
    return (
      <div className={styles["none"]}>
        <p>This cannot be shown here: the evidence of this store lacks something that it is made of.</p>
        {answer.says.map((line) => (
          <p key={line}>{line}</p>
        ))}
      </div>
    );
  const { report, words, glossary, groups, axis } = answer;
  const told = tells === undefined ? [words.headline] : sayRows(groups, tells);
  return (
    <div className={styles["answer"]}>
      {told.length > 0 ? (
        <div className={styles["headline"]} aria-live="polite">
          {told.map((line) => (
            <p key={line}>{line}</p>
          ))}
        </div>
      ) : null}
      <DatingStrips
        groups={rowsToShow(groups, shows)}
        axis={axis}
        claimed={report.attribution.years}
        glossary={glossary}
        openAtFirst={unfolds}
        hasLegend={hasLegend}
      />
      {hasLegend ? (
        <p className={styles["beside"]}>
          Answered now, from <TextLink to="/house/history">revision {report.revision}</TextLink> of the
          evidence.
        </p>
      ) : null}
    </div>
  );
}
