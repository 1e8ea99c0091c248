import { memo } from "react";
import { Disclosure } from "#web/shared/ui/Disclosure.tsx";
import styles from "./ConclusionsColumn.module.css";

interface Props {
  title: string;
  lines: readonly string[];
  none: string;
}

const MOST_AT_ONCE = 5;

/** What is left open, line by line; a long list unfolds. */
export const Gaps = memo(function Gaps({ title, lines, none }: Props) {
  const list = (some: readonly string[]) => (
    <ul className={styles["list"]}>
      {some.map((line) => (
        <li key={line}>{line}</li>
      ))}
    </ul>
  );
  const distinct = [...new Set(lines)];
  return (
    <section aria-label={title}>
      <h2 className={styles["heading"]}>
        {title} {distinct.length > 0 ? <span>· {distinct.length}</span> : null}
      </h2>
      {distinct.length === 0 ? (
        <p className={styles["none"]}>{none}</p>
      ) : (
        list(distinct.slice(0, MOST_AT_ONCE))
      )}
      {distinct.length > MOST_AT_ONCE ? (
        <Disclosure summary={`${distinct.length - MOST_AT_ONCE} more`}>
          {list(distinct.slice(MOST_AT_ONCE))}
        </Disclosure>
      ) : null}
    </section>
  );
});
