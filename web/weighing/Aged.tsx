import type { ReactNode } from "react";
import type { Stage } from "#server/domain/weighing/weighing.ts";
import { useIsOld } from "./weighing-desk.ts";

interface Props {
  /** What is told inside. */
  stage: Stage;
  as?: "section" | "div" | "p";
  id?: string;
  className?: string | undefined;
  "aria-label"?: string;
  "aria-labelledby"?: string;
  "aria-live"?: "polite";
  children: ReactNode;
}

/** Marks what it holds as old while it is of the piece as it was; what it holds is not drawn again for that. */
export function Aged({ stage, as: Element = "section", children, ...rest }: Props) {
  return (
    <Element {...rest} data-old={useIsOld(stage)}>
      {children}
    </Element>
  );
}
