import { Disclosure } from "#web/shared/ui/Disclosure.tsx";
import { Aged } from "./Aged.tsx";
import styles from "./Rivals.module.css";
import { useWeighed } from "./weighing-desk.ts";

/** Other stories of the piece side by side: a table where there is room, one card a story where there is not. */
export function RivalsSection() {
  const { weighed } = useWeighed();
  const { rivals, rivalsTogether } = weighed.words;
  return (
    <Aged stage="rivals" aria-labelledby="rivals-heading" className={styles["section"]}>
      <h2 id="rivals-heading">Rival stories, side by side</h2>
      {rivals === undefined ? (
        <p className={styles["none"]}>Not worked out yet.</p>
      ) : (
        <>
          <p className={styles["says"]}>{rivalsTogether}</p>
          {/* The roles are said once more, since a table that is laid out as cards loses them. */}
          {/* biome-ignore-start lint/a11y/noRedundantRoles: see above */}
          <table role="table" className={styles["table"]} aria-labelledby="rivals-heading">
            <thead role="rowgroup">
              <tr role="row">
                <th role="columnheader" scope="col">
                  Story
                </th>
                <th role="columnheader" scope="col">
                  Years
                </th>
                <th role="columnheader" scope="col">
                  Compared with the story as claimed
                </th>
                <th role="columnheader" scope="col">
                  What it assumes
                </th>
                <th role="columnheader" scope="col">
                  What told
                </th>
              </tr>
            </thead>
            <tbody role="rowgroup">
              {rivals.map((rival) => (
                <tr role="row" key={`${rival.kind} ${rival.region ?? ""}`}>
                  <th role="rowheader" scope="row" className={styles["name"]}>
                    {rival.name}
                  </th>
                  <td role="cell" data-head="Years">
                    {rival.years}
                  </td>
                  <td role="cell" data-head="Compared with the story as claimed">
                    {rival.weighs} <span className={styles["odds"]}>{rival.odds}</span>
                  </td>
                  <td role="cell" data-head="What it assumes">
                    {rival.assumes} {rival.laterParts}
                  </td>
                  <td role="cell" data-head="What told">
                    <Told told={rival.told} wouldTell={rival.wouldTell} />
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
          {/* biome-ignore-end lint/a11y/noRedundantRoles: see above */}
          <p className={styles["none"]}>
            “Made later to look old” is weighed only where it is asked for, among what is assumed: its prior
            is a choice, not a finding.
          </p>
        </>
      )}
    </Aged>
  );
}

const AT_ONCE = 2;

function Told({ told, wouldTell }: { told: readonly string[]; wouldTell: readonly string[] }) {
  const more = told.slice(AT_ONCE);
  if (told.length + wouldTell.length === 0) return "–";
  return (
    <>
      <ul className={styles["told"]}>
        {told.slice(0, AT_ONCE).map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      {more.length + wouldTell.length > 0 ? (
        <Disclosure
          summary={more.length > 0 ? `${more.length} more, and what would tell` : "What would tell"}
        >
          <ul className={styles["told"]}>
            {more.map((line) => (
              <li key={line}>{line}</li>
            ))}
            {wouldTell.map((line) => (
              <li key={line} className={styles["look"]}>
                Would tell, if looked for: {line}
              </li>
            ))}
          </ul>
        </Disclosure>
      ) : null}
    </>
  );
}
