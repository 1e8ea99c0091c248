import { useMutation } from "@apollo/client/react";
import { useState } from "react";
import { useLocation } from "wouter";
import { isProblem } from "#server/domain/problem.ts";
import { readDating } from "#server/domain/read-dating.ts";
import { Button } from "../shared/ui/Button.tsx";
import { Dialog } from "../shared/ui/Dialog.tsx";
import { sayFailure } from "../shared/ui/say-failure.ts";
import { TextField } from "../shared/ui/TextField.tsx";
import { TextLink } from "../shared/ui/TextLink.tsx";
import { sayDating } from "../shared/words/say-dating.ts";
import styles from "./BeginDialog.module.css";
import { BeginPieceDocument } from "./change-piece.graphql.ts";

export interface Props {
  isOpen: boolean;
  onOpenChange: (isOpen: boolean) => void;
}

/** Asks for a name and the claimed date, makes the examination and opens it. */
export function BeginDialog({ isOpen, onOpenChange }: Props) {
  const [title, setTitle] = useState("");
  const [typed, setTyped] = useState("");
  const [refusal, setRefusal] = useState<string>();
  const [beginPiece, { loading }] = useMutation(BeginPieceDocument);
  const [, navigate] = useLocation();
  const thisYear = new Date().getFullYear();
  const date = typed.trim();
  const dating = date === "" ? undefined : readDating(date, "event");
  const offered = isProblem(dating) ? dating.instead : undefined;

  const begin = async () => {
    setRefusal(undefined);
    try {
      const { data } = await beginPiece({
        variables: {
          piece: {
            title: title.trim() || "Piece without a name",
            examined: thisYear,
            // Nothing claimed: made at any time up to now.
            attribution: { date: date || `../${thisYear}` },
            parts: [],
            observations: [],
          },
        },
      });
      const result = data?.createExamination;
      if (result?.__typename === "ExaminationChanged") navigate(`/pieces/${result.examination.id}`);
      else setRefusal(result?.problems.map((problem) => problem.message).join(" "));
    } catch (failure) {
      const { what, next } = sayFailure(failure);
      setRefusal(`${what} ${next}`);
    }
  };

  return (
    <Dialog title="Begin an examination" isOpen={isOpen} onOpenChange={onOpenChange}>
      {(close) => (
        <form
          className={styles["form"]}
          onSubmit={(event) => {
            event.preventDefault();
            if (!isProblem(dating)) void begin();
          }}
        >
          <TextField
            label="What the piece is called"
            hint="For yourself: a short description, a number, where it stands."
            value={title}
            onChange={setTitle}
            maxLength={200}
            autoFocus
          />
          <TextField
            label="Date claimed"
            value={typed}
            onChange={setTyped}
            hint={
              dating && !isProblem(dating)
                ? `Read as: ${sayDating(dating)}.`
                : "A year 1765, about a year 1765~, a span 1760/1780, a decade 176X, a century 17XX. Leave it empty if none is claimed."
            }
            {...(isProblem(dating) ? { refusal: dating.message } : {})}
            autoComplete="off"
            spellCheck="false"
          />
          {offered ? (
            <div>
              <Button onPress={() => setTyped(offered)}>Take {offered}</Button>
            </div>
          ) : null}
          <p className={styles["next"]}>
            Region, form, style and maker come next, on the piece’s own page; each can be changed at any time.
            Is the piece not there yet? <TextLink to="/plan">Plan the look</TextLink> first.
          </p>
          {refusal ? (
            <p role="alert" className={styles["refusal"]}>
              {refusal}
            </p>
          ) : null}
          <div className={styles["buttons"]}>
            <Button look="main" type="submit" isDisabled={loading || isProblem(dating)}>
              Begin
            </Button>
            <Button onPress={close}>Cancel</Button>
          </div>
        </form>
      )}
    </Dialog>
  );
}
