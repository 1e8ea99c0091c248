import styles from "./YearsLegend.module.css";

const signs = [
  { name: "every reading of the date", d: "M0 2H24V10H0z", look: "solid" },
  { name: "some reading", d: "M0 2H24V10H0z", look: "pale" },
  { name: "goes on", d: "M0 2H17V10H0zM17 2l6 4-6 4z", look: "solid" },
  { name: "recorded once", d: "M12 1.5l4.5 4.5-4.5 4.5L7.5 6z", look: "record" },
  { name: "not found", d: "M0 6H24M8 2l8 8m0-8l-8 8", look: "struck" },
  { name: "habit or fashion", d: "M0 4H24V8H0z", look: "solid" },
] as const;

export type YearsSign = (typeof signs)[number]["name"];

/** What the marks of a drawing of claims mean, of those that are in it. */
export const YearsLegend = ({ only }: { only: ReadonlySet<YearsSign> }) => (
  <ul className={styles["legend"]} aria-label="What the marks mean">
    {signs
      .filter(({ name }) => only.has(name))
      .map(({ name, d, look }) => (
        <li key={name}>
          <svg width="24" height="12" aria-hidden="true">
            <path d={d} className={styles[look]} />
          </svg>{" "}
          {name}
        </li>
      ))}
  </ul>
);
