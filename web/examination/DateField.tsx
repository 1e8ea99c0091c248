import { isProblem } from "#server/domain/problem.ts";
import { readDating } from "#server/domain/read-dating.ts";
import { Button } from "#web/shared/ui/Button.tsx";
import { TextField } from "#web/shared/ui/TextField.tsx";
import { sayDating } from "#web/shared/words/say-dating.ts";
import styles from "./Claimed.module.css";
import { useDeeds, useDesk } from "./desk.ts";
import { changeAttribution } from "./edit-piece.ts";
import { problemAt } from "./problem-at.ts";
import { useTyped } from "./use-typed.ts";

/** The claimed date. Says while one types how it is read, or why not; it is stored when the field is left or on Enter. */
export function DateField() {
  const { piece, problems } = useDesk();
  const { edit } = useDeeds();
  const stored = piece.attribution.date;
  const typed = useTyped(stored);
  const text = typed.text.trim();
  const dating = readDating(text, "event");
  const isUnreadable = isProblem(dating);
  const refusal = isUnreadable ? dating : problemAt(problems, "attribution.date");

  const keep = (date: string) => {
    if (isProblem(readDating(date, "event"))) return;
    if (date !== typed.before) edit(changeAttribution({ date }), typed.since);
    typed.end();
  };
  const offered = refusal?.instead;
  return (
    <div>
      <TextField
        label="Date"
        value={typed.text}
        onChange={typed.type}
        onBlur={() => keep(text)}
        onKeyDown={(event) => event.key === "Enter" && keep(text)}
        hint={
          isUnreadable
            ? undefined
            : `Read as: ${sayDating(dating)}. About is 1765~, a span 1760/1780, a decade 176X.`
        }
        {...(refusal ? { refusal: refusal.message } : {})}
        autoComplete="off"
        spellCheck="false"
      />
      {offered ? (
        <span className={styles["offer"]}>
          <Button onPress={() => keep(offered)}>Take {offered}</Button>
        </span>
      ) : null}
    </div>
  );
}
