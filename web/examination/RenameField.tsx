import { useState } from "react";
import { Button } from "#web/shared/ui/Button.tsx";
import { TextField } from "#web/shared/ui/TextField.tsx";
import { useDeeds, useDesk } from "./desk.ts";
import { renamePiece } from "./edit-piece.ts";
import { problemAt } from "./problem-at.ts";
import styles from "./TitleBlock.module.css";

/** Another title for the piece: kept by Enter or the button, dropped by Escape. */
export function RenameField({ onDone }: { onDone: () => void }) {
  const { piece, problems } = useDesk();
  const { edit, shown } = useDeeds();
  const [since] = useState(shown);
  const [title, setTitle] = useState(since.title);
  const refusal = problemAt(problems, "title")?.message;
  const keep = () => {
    if (title.trim() !== "" && title.trim() !== since.title) edit(renamePiece(title.trim()), since);
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
