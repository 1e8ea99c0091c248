import { BeingMade } from "../shared/ui/BeingMade.tsx";
import { PageHeading } from "../shared/ui/PageHeading.tsx";
import styles from "./regional.module.css";

interface Props {
  /** Of the page that it stands for. */
  title: string;
  /** How far they are counted. */
  percent: number;
  /** Asks again. */
  onAgain: () => Promise<unknown>;
}

/** Stands for a page on regions while the claims on all of them are still being counted. */
export const RegionsBeingCounted = ({ title, percent, onAgain }: Props) => (
  <article className={styles["page"]}>
    <header className={styles["head"]}>
      <PageHeading title={title}>{title}</PageHeading>
      <BeingMade name="Counted so far" percent={percent} onAgain={onAgain}>
        The claims on each region are still being counted: after a start, and where a region was put within
        another, all claims are gone through, beside everything else that is asked.
      </BeingMade>
    </header>
  </article>
);
