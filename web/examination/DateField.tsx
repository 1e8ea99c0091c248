import { useEffect, useState } from "react";
import { isProblem } from "#server/domain/problem.ts";
import { readDating } from "#server/domain/read-dating.ts";
import { DatingField } from "#web/shared/ui/DatingField.tsx";
import { sayDating } from "#web/shared/words/say-dating.ts";
import { useDeeds, useDesk } from "./desk.ts";
import { changeAttribution } from "./edit-piece.ts";
import { problemAt } from "./problem-at.ts";

/** The claimed date; it is stored when the field is left or on Enter. */
export function DateField() {
  const { piece, problems } = useDesk();
  const { edit } = useDeeds();
  const stored = piece.attribution.date;
  const [typed, setTyped] = useState(stored);
  useEffect(() => setTyped(stored), [stored]);
  const keep = (date: string) => {
    setTyped(date);
    if (date !== stored && !isProblem(readDating(date, "event"))) edit(changeAttribution({ date }));
  };
  return (
    <DatingField
      label="Date"
      value={typed}
      datingRole="event"
      onType={setTyped}
      onKeep={keep}
      say={sayDating}
      refusal={problemAt(problems, "attribution.date")?.message}
    />
  );
}
