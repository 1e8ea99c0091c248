import { useQuery } from "@apollo/client/react";
import { useState } from "react";
import { useStep } from "../shared/apollo/use-step.ts";
import { Button } from "../shared/ui/Button.tsx";
import { Select } from "../shared/ui/Select.tsx";
import { TextField } from "../shared/ui/TextField.tsx";
import { sayPerson } from "../shared/words/say-person.ts";
import { PeopleToCallDocument, SayCommentDocument } from "./Discussion.graphql.ts";
import styles from "./proposals.module.css";
import { Refusals } from "./Refusals.tsx";

interface Props {
  on: string;
  isSeenByAll: boolean;
  /** The comment that is answered. */
  answers?: string;
  /** What stands in the field at first. */
  begun?: string;
  onSaid: () => void;
}

const NOBODY = "";

/** Says something, and calls whoever should see it. */
export function SayComment({ on, isSeenByAll, answers, begun = "", onSaid }: Props) {
  const [text, setText] = useState(begun);
  const [called, setCalled] = useState<readonly string[]>([]);
  const { data } = useQuery(PeopleToCallDocument, { skip: !isSeenByAll });
  const step = useStep(SayCommentDocument);
  const people = data?.people ?? [];
  const say = async () => {
    if ((await step.take({ on, text, answers: answers ?? null, mentions: called })) === undefined) return;
    setText("");
    setCalled([]);
    onSaid();
  };
  const names = people.filter(({ id }) => called.includes(id)).map(sayPerson);
  return (
    <div className={styles["form"]}>
      <TextField
        label={answers === undefined ? "Say something" : "Your answer"}
        value={text}
        onChange={setText}
        lines={3}
        maxLength={5000}
      />
      {people.length > 0 ? (
        <Select
          label="Call somebody"
          choices={[
            { id: NOBODY, label: "nobody" },
            ...people.map((person) => ({ id: person.id, label: sayPerson(person) })),
          ]}
          value={called.at(-1) ?? NOBODY}
          onChange={(id) => setCalled(id === NOBODY ? [] : [...called.filter((one) => one !== id), id])}
        />
      ) : null}
      {names.length > 0 ? <p className={styles["beside"]}>Calls {names.join(", ")}.</p> : null}
      <Refusals of={[step]} />
      <div className={styles["acts"]}>
        <Button isDisabled={step.isUnderWay || text.trim() === ""} onPress={() => void say()}>
          {answers === undefined ? "Say it" : "Answer"}
        </Button>
      </div>
    </div>
  );
}
