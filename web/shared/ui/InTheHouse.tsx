import styles from "./InTheHouse.module.css";
import { TextLink } from "./TextLink.tsx";

/** Leads from a page of the house back to its first one. */
export const InTheHouse = () => (
  <p className={styles["back"]}>
    <TextLink to="/house">The house</TextLink>
  </p>
);
