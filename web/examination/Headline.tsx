import { TextLink } from "#web/shared/ui/TextLink.tsx";
import { WeighedHeadline } from "#web/weighing/WeighedHeadline.tsx";
import { useDesk } from "./desk.ts";
import styles from "./Headline.module.css";
import { problemsElsewhere } from "./problem-at.ts";

const SHOWN_AT_FIELDS = [
  "title",
  "attribution.date",
  "attribution.region",
  "attribution.form",
  "attribution.style",
  "attribution.maker",
];

/** The conclusion as a sentence, what it rests on most, and the revision it was reached on. */
export function Headline() {
  const { words, report, problems, standing } = useDesk();
  const elsewhere = problemsElsewhere(problems, SHOWN_AT_FIELDS);
  return (
    <section className={styles["headline"]} aria-label="Conclusion">
      {words ? <p className={styles["says"]}>{words.headline}</p> : null}
      {words && words.reasons.length > 0 ? (
        <ul className={styles["reasons"]}>
          {words.reasons.map((reason) => (
            <li key={reason}>{reason}</li>
          ))}
        </ul>
      ) : null}
      {words ? <WeighedHeadline /> : null}
      {elsewhere.map((problem) => (
        <p key={problem.path.join()} role="alert" className={styles["problem"]}>
          {problem.message}
          {problem.instead ? ` Did you mean “${problem.instead}”?` : null}
        </p>
      ))}
      {standing.kind === "unreachable" ? (
        <p role="alert" className={styles["problem"]}>
          {standing.says} What you did is still on this page.
        </p>
      ) : null}
      {report ? (
        <p className={styles["beside"]}>
          Answered from <TextLink to="/house/history">revision {report.revision}</TextLink> of the evidence.
          Evidence, not a certificate or a valuation.
          {report.complete ? null : " The search was cut short: see what was not searched."}
        </p>
      ) : null}
    </section>
  );
}
