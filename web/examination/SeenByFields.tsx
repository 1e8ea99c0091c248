import { useQuery } from "@apollo/client/react";
import { useState } from "react";
import { useStep } from "#web/shared/apollo/use-step.ts";
import { Button } from "#web/shared/ui/Button.tsx";
import { Checkboxes } from "#web/shared/ui/Checkboxes.tsx";
import { RadioGroup } from "#web/shared/ui/RadioGroup.tsx";
import { sayPerson } from "#web/shared/words/say-person.ts";
import { type AccessFieldsFragment, PeopleToShowDocument, SetAccessDocument } from "./SeenBy.graphql.ts";
import styles from "./SeenByFields.module.css";

const CHOICES = [
  { id: "house", label: "The whole house" },
  { id: "me", label: "Me alone" },
  { id: "some", label: "Me and …" },
] as const;
type Who = (typeof CHOICES)[number]["id"];

interface Props {
  id: string;
  access: AccessFieldsFragment;
  onSaid: (access: AccessFieldsFragment) => void;
}

/** Says who sees the piece: the whole house, whoever recorded it alone, or some others as well. */
export function SeenByFields({ id, access, onSaid }: Props) {
  const { data } = useQuery(PeopleToShowDocument);
  const step = useStep(SetAccessDocument);
  const [who, setWho] = useState<Who>(asChosen(access));
  const [named, setNamed] = useState<readonly string[]>(access.seenBy?.map((person) => person.id) ?? []);
  const others = (data?.people ?? []).filter((person) => person.id !== access.by.id);
  // Who is in the house no more cannot be named again.
  const kept = others.filter((person) => named.includes(person.id));
  const seenBy = { house: null, me: [], some: kept }[who];
  const say = async () => {
    const told = await step.take({ id, seenBy: seenBy?.map((person) => person.id) ?? null });
    if (told !== undefined) onSaid({ ...access, seenBy });
  };
  return (
    <div className={`screen-only ${styles["fields"]}`}>
      <RadioGroup label="Who sees this piece" isLabelHidden choices={CHOICES} value={who} onChange={setWho} />
      {who === "some" && others.length > 0 ? (
        <Checkboxes
          label="Persons who see it besides me"
          choices={others.map((person) => ({ id: person.id, label: sayPerson(person) }))}
          value={kept.map((person) => person.id)}
          onChange={setNamed}
        />
      ) : null}
      <p>
        {who === "house"
          ? "Everybody with an account here sees it."
          : "For all others it is not there, for owners of the house too. Whoever keeps the machine can read it."}
      </p>
      <div role="alert">
        {step.refused.map((message) => (
          <p key={message}>{message}</p>
        ))}
      </div>
      <Button
        isDisabled={step.isUnderWay || (who === "some" && kept.length === 0)}
        onPress={() => void say()}
      >
        Let it be seen so
      </Button>
    </div>
  );
}

const asChosen = ({ seenBy }: AccessFieldsFragment): Who =>
  seenBy === null ? "house" : seenBy.length === 0 ? "me" : "some";
