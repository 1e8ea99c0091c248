import type { ReactNode } from "react";
import { Dialog as AriaDialog } from "react-aria-components/Dialog";
import { Heading } from "react-aria-components/Heading";
import { Modal, ModalOverlay } from "react-aria-components/Modal";
import styles from "./Dialog.module.css";

interface Props {
  title: string;
  isOpen: boolean;
  onOpenChange: (isOpen: boolean) => void;
  /** Gets `close`; ends with the buttons. */
  children: (close: () => void) => ReactNode;
  /** alertdialog where something is to be decided before going on. */
  role?: "dialog" | "alertdialog";
}

/** A sheet laid over the page: keeps the focus, closes with Escape or a press beside it. */
export const Dialog = ({ title, isOpen, onOpenChange, children, role = "dialog" }: Props) => (
  <ModalOverlay className={styles["veil"] ?? ""} isOpen={isOpen} onOpenChange={onOpenChange} isDismissable>
    <Modal className={styles["sheet"] ?? ""}>
      <AriaDialog className={styles["dialog"] ?? ""} role={role}>
        {({ close }) => (
          <>
            <Heading slot="title" className={styles["title"] ?? ""}>
              {title}
            </Heading>
            {children(close)}
          </>
        )}
      </AriaDialog>
    </Modal>
  </ModalOverlay>
);
