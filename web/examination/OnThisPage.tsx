import styles from "./OnThisPage.module.css";

const PLACES: readonly (readonly [id: string, name: string])[] = [
  ["parts", "Parts"],
  ["years-heading", "When each thing was made"],
  ["rules-out", "What rules it out"],
  ["would-have-to-be-true", "What would have to be true"],
  ["part-by-part", "Part by part"],
  ["look-next", "What to look at next"],
  ["rivals-heading", "Rival stories"],
  ["assumed", "What is assumed"],
];

/** Leads to each part of an examination, which is long on a phone. */
export const OnThisPage = () => (
  <nav aria-label="On this page" className={`screen-only ${styles["places"]}`}>
    <ul>
      {PLACES.map(([id, name]) => (
        <li key={id}>
          <a href={`#${id}`}>{name}</a>
        </li>
      ))}
    </ul>
  </nav>
);
