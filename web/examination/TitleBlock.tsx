import { useState } from "react";
import { ActionButton } from "#web/actions/ActionButton.tsx";
import { printPage } from "#web/actions/print-page.ts";
import { undoChange } from "#web/actions/undo-change.ts";
import { Button } from "#web/shared/ui/Button.tsx";
import { PageHeading } from "#web/shared/ui/PageHeading.tsx";
import { TextField } from "#web/shared/ui/TextField.tsx";
import { TextLink } from "#web/shared/ui/TextLink.tsx";
import { Claimed } from "./Claimed.tsx";
import { useDeeds, useDesk } from "./desk.ts";
import { renamePiece } from "./edit-piece.ts";
import { problemAt } from "./problem-at.ts";
import { StandingLine } from "./StandingLine.tsx";
import styles from "./TitleBlock.module.css";

/** What the piece is called, what is claimed of it, and how what is shown stands to what is stored. */
export function TitleBlock() {
  const desk = useDesk();
  const { title, invented } = desk.piece;
  const [isRenaming, setIsRenaming] = useState(false);
  return (
    <header className={styles["title"]}>
      <div className={styles["line"]}>
        {isRenaming ? (
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

function RenameField({ onDone }: { onDone: () => void }) {
  const { piece, problems } = useDesk();
  const { edit } = useDeeds();
  const [title, setTitle] = useState(piece.title);
  const refusal = problemAt(problems, "title")?.message;
  const keep = () => {
    if (title.trim() !== "" && title.trim() !== piece.title) edit(renamePiece(title.trim()));
    onDone();
  };
  return (
    <form
      className={styles["rename"]}
      onSubmit={(event) => {
        event.preventDefault();
        keep();
      }}
    >
      <h1 className="visually-hidden">{piece.title}</h1>
      <TextField
        label="What the piece is called"
        value={title}
        onChange={setTitle}
        onKeyDown={(event) => event.key === "Escape" && onDone()}
        maxLength={200}
        autoFocus
        {...(refusal === undefined ? {} : { refusal })}
      />
      <Button type="submit" look="main">
        Keep
      </Button>
      <Button onPress={onDone}>Leave as it was</Button>
    </form>
  );
}
