import { useState } from "react";
import { ActionButton } from "#web/actions/ActionButton.tsx";
import { printPage } from "#web/actions/print-page.ts";
import { undoChange } from "#web/actions/undo-change.ts";
import { Button } from "#web/shared/ui/Button.tsx";
import { PageHeading } from "#web/shared/ui/PageHeading.tsx";
import { TextLink } from "#web/shared/ui/TextLink.tsx";
import { useFetched } from "#web/shared/ui/use-fetched.ts";
import { Claimed } from "./Claimed.tsx";
import { useDesk } from "./desk.ts";
import { StandingLine } from "./StandingLine.tsx";
import styles from "./TitleBlock.module.css";

const loadRenameField = () => import("./RenameField.tsx");

/** What the piece is called, what is claimed of it, and how what is shown stands to what is stored. */
export function TitleBlock() {
  const desk = useDesk();
  const { title, invented } = desk.piece;
  const [isRenaming, setIsRenaming] = useState(false);
  const RenameField = useFetched(loadRenameField)?.RenameField;
  return (
    <header className={styles["title"]}>
      <div className={styles["line"]}>
        {isRenaming && RenameField ? (
          <RenameField onDone={() => setIsRenaming(false)} />
        ) : (
          <PageHeading title={title}>{title}</PageHeading>
        )}
        {invented ? <span className={styles["tag"]}>invented for demonstration</span> : null}
        <span className={`screen-only ${styles["deeds"]}`}>
          {isRenaming ? null : (
            <Button look="quiet" onPress={() => setIsRenaming(true)}>
              Rename
            </Button>
          )}
          <TextLink to={`/plan?piece=${desk.stored.id}`}>Plan the look</TextLink>
          <ActionButton action={undoChange} context={desk} look="quiet" />
          <ActionButton action={printPage} context={desk} look="quiet" />
          <StandingLine />
        </span>
      </div>
      {invented ? (
        <p className={styles["invented"]}>
          No such object exists; the evidence it is tested against is real.
        </p>
      ) : null}
      <Claimed attribution={desk.piece.attribution} examined={desk.piece.examined} />
    </header>
  );
}
