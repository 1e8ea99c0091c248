import styles from "./Legend.module.css";
import { RowMark } from "./RowMark.tsx";
import line from "./StripLine.module.css";

const bar = (look: string | undefined) => (
  <g className={line["plain"]}>
    <rect y="2" width="24" height="8" className={look} />
  </g>
);

const entries = [
  { says: "usual years", drawn: bar(line["usual"]) },
  { says: "possible years", drawn: bar(line["possible"]) },
  {
    says: "goes on without a stated end",
    drawn: (
      <g className={line["plain"]}>
        <path d="M0 2h17l6 4-6 4H0z" className={line["usual"]} />
      </g>
    ),
  },
  {
    says: "cannot be: distance from the claim",
    drawn: (
      <g className={line["hard"]}>
        <path d="M5 6H24" className={line["distance"]} />
        <path d="M1 2l8 8M9 2l-8 8" className={line["cross"]} />
      </g>
    ),
  },
  {
    says: "unusual, not impossible",
    drawn: (
      <g className={line["soft"]}>
        <path d="M5 6H24" className={line["distance"]} />
        <path d="M1.5 10.5l7-9" className={line["cross"]} />
      </g>
    ),
  },
  {
    says: "says nothing, with the reason",
    drawn: (
      <g>
        <path d="M4 6H24" className={line["silent"]} />
        <circle cx="4" cy="6" r="3.2" className={line["open"]} />
      </g>
    ),
  },
  { says: "way excluded", drawn: <path d="M0 6H24" className={line["excluded"]} /> },
  {
    says: "claimed years",
    drawn: (
      <g>
        <rect x="5" width="14" height="12" className={styles["band"]} />
        <path d="M5 0V12M19 0V12" className={styles["knife"]} />
      </g>
    ),
  },
] as const;

/** What the lines and marks of the strips mean; printed with them. */
export const Legend = ({ hasTouched = false }: { hasTouched?: boolean }) => (
  <ul className={styles["legend"]} aria-label="How to read the strips">
    {entries.map(({ says, drawn }) => (
      <li key={says}>
        <svg width="24" height="12" aria-hidden="true">
          {drawn}
        </svg>
        {says}
      </li>
    ))}
    <li>
      <RowMark mark="for" />
      agrees
    </li>
    <li>
      <RowMark mark="sign" />
      sign of alteration
    </li>
    <li>
      <RowMark mark="sign-set-aside" />
      sign set aside
    </li>
    <li>
      <RowMark mark="sign-of-age" />
      sign that a part is original
    </li>
    {hasTouched ? (
      <li>
        <svg width="6" height="12" aria-hidden="true">
          <path d="M3 0V12" className={styles["touched"]} />
        </svg>
        touched by the story chosen
      </li>
    ) : null}
  </ul>
);
