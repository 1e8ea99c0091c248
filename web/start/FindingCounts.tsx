import type { Report } from "#server/domain/report.ts";
import { RowMark } from "#web/strips/RowMark.tsx";
import { countFindings } from "./count-findings.ts";
import styles from "./StripsThumbnail.module.css";

/** What the strips of a piece come to, in words with the marks that the strips have. */
export function FindingCounts({ report }: { report: Report }) {
  const { cannot, unusual, agree, silent, signs } = countFindings(report);
  const counted = [
    { mark: "against-hard", count: cannot, says: "cannot be" },
    { mark: "against-soft", count: unusual, says: "unusual" },
    { mark: "for", count: agree, says: agree === 1 ? "agrees" : "agree" },
    { mark: "silent", count: silent, says: silent === 1 ? "says nothing" : "say nothing" },
    { mark: "sign", count: signs, says: signs === 1 ? "sign of alteration" : "signs of alteration" },
  ] as const;
  const present = counted.filter(({ count }) => count > 0);
  if (present.length === 0) return <p className={styles["counts"]}>Nothing recorded yet</p>;
  return (
    <ul className={styles["counts"]}>
      {present.map(({ mark, count, says }) => (
        <li key={mark}>
          <RowMark mark={mark} /> {count} {says}
        </li>
      ))}
    </ul>
  );
}
