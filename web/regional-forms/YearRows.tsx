import type { ReactNode } from "react";
import { YearsGround } from "../shared/years/YearsGround.tsx";
import { YearTicks } from "../shared/years/YearTicks.tsx";
import type { YearAxis } from "../shared/years/year-axis.ts";
import styles from "./YearRows.module.css";

/** The ground of rows of years: the axis above, its lines behind. */
export const YearRows = ({ axis, children }: { axis: YearAxis; children: ReactNode }) => (
  <>
    <div className={styles["axis"]}>
      <YearTicks axis={axis} />
    </div>
    <div className={styles["rows"]}>
      <div className={styles["ground"]}>
        <YearsGround axis={axis} />
      </div>
      {children}
    </div>
  </>
);

interface RowProps {
  /** The words beside the drawing. */
  label: ReactNode;
  children: ReactNode;
}

/** One row: words, and what is drawn on the axis. */
export const YearRow = ({ label, children }: RowProps) => (
  <li className={styles["row"]}>
    <p className={styles["label"]}>{label}</p>
    <div className={styles["bar"]}>{children}</div>
  </li>
);
