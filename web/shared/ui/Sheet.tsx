import type { ReactNode } from "react";
import { Dialog } from "react-aria-components/Dialog";
import { Heading } from "react-aria-components/Heading";
import { Modal, ModalOverlay } from "react-aria-components/Modal";
import { Button } from "./Button.tsx";
import styles from "./Sheet.module.css";

interface Props {
  title: ReactNode;
  isOpen: boolean;
  onClose: () => void;
  /** Stands beside the way to close it. */
  deeds?: ReactNode;
  children: ReactNode;
}

/** A large sheet laid over the page for a drawing that needs the width; closes with Escape, its button or a press beside it. */
export const Sheet = ({ title, isOpen, onClose, deeds, children }: Props) => (
  <ModalOverlay
    className={styles["veil"] ?? ""}
    isOpen={isOpen}
    onOpenChange={(opens) => opens || onClose()}
    isDismissable
  >
    <Modal className={styles["sheet"] ?? ""}>
      <Dialog className={styles["dialog"] ?? ""}>
        <div className={styles["head"]}>
          <Heading slot="title" level={2} className={styles["title"] ?? ""}>
            {title}
          </Heading>
          <span className={styles["deeds"]}>
            {deeds}
            <Button onPress={onClose}>Close</Button>
          </span>
        </div>
        {children}
      </Dialog>
    </Modal>
  </ModalOverlay>
);
