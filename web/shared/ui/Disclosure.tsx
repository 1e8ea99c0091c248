import type { ReactNode } from "react";
import { Button } from "react-aria-components/Button";
import { Disclosure as AriaDisclosure, DisclosurePanel } from "react-aria-components/Disclosure";
import { Heading } from "react-aria-components/Heading";
import styles from "./Disclosure.module.css";

interface Props {
  /** The line that is always there. */
  summary: ReactNode;
  children: ReactNode;
  /** Level of the heading that the line is. */
  level?: 2 | 3 | 4;
  isOpen?: boolean;
  isOpenAtFirst?: boolean;
  onOpenChange?: (isOpen: boolean) => void;
}

/** A line that unfolds. Everything in it is printed, open or not. */
export const Disclosure = ({ summary, children, level = 3, isOpen, isOpenAtFirst, onOpenChange }: Props) => (
  <AriaDisclosure
    className={styles["disclosure"] ?? ""}
    {...(isOpen === undefined ? {} : { isExpanded: isOpen })}
    {...(isOpenAtFirst === undefined ? {} : { defaultExpanded: isOpenAtFirst })}
    {...(onOpenChange === undefined ? {} : { onExpandedChange: onOpenChange })}
  >
    <Heading level={level} className={styles["heading"] ?? ""}>
      <Button slot="trigger" className={styles["trigger"] ?? ""}>
        <svg className={styles["arrow"]} viewBox="0 0 6 10" aria-hidden="true">
          <path d="M1 1l4 4-4 4" />
        </svg>
        <span>{summary}</span>
      </Button>
    </Heading>
    <DisclosurePanel className={styles["panel"] ?? ""}>{children}</DisclosurePanel>
  </AriaDisclosure>
);
