import { TextLink } from "#web/shared/ui/TextLink.tsx";
import styles from "./PieceColumn.module.css";

/** What to leave alone while looking, said where one records what was looked at. */
export const LookSafely = () => (
  <p className={styles["safely"]}>
    <b>Look, do not loosen.</b> Take nothing apart, try no solvent, move no heavy case alone. Old finishes may
    hold lead or arsenic, old mirrors mercury. What cannot be seen, record as such.{" "}
    <TextLink to="/method#cautions">Why</TextLink>
  </p>
);
