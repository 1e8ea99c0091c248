import { StateSwatch } from "#web/drawings/StateSwatch.tsx";
import { Aged } from "./Aged.tsx";
import { likeliestOf } from "./likeliest.ts";
import styles from "./Weighing.module.css";
import { useWeighed } from "./weighing-desk.ts";

/** What each part most probably is, with its range; parts that nothing seen bears on stand together at the end. */
export function PartsSection() {
  const { weighed } = useWeighed();
  const { parts } = weighed.words;
  const dates = weighed.weighing.dates;
  const told = parts?.filter(({ tells }) => tells) ?? [];
  const silent = parts?.filter(({ tells }) => !tells) ?? [];
  return (
    <Aged stage="dates" id="part-by-part" aria-label="Part by part" className={styles["section"]}>
      <h2 className={styles["heading"]}>
        Part by part <span>· what each most probably is</span>
      </h2>
      {parts === undefined ? <p className={styles["none"]}>It is worked out after the years.</p> : null}
      <ul className={styles["parts"]}>
        {told.map(({ parts: all, name, brief }) => (
          <li key={all.join()}>
            <StateSwatch state={likeliestOf(dates, all)} />
            <span>
              <b>{name}</b> {brief}.
            </span>
          </li>
        ))}
      </ul>
      {silent.length > 0 ? (
        <p className={styles["line"]}>
          Nothing seen tells of {silent.map(({ name }) => name.replace(/^The/, "the")).join(", ")}: what is
          assumed of such parts stands.
        </p>
      ) : null}
    </Aged>
  );
}
