import { useState } from "react";
import { type Claim, STRENGTHS, type Strength } from "#server/domain/claim.ts";
import { isProblem } from "#server/domain/problem.ts";
import { readDating } from "#server/domain/read-dating.ts";
import { roleOfRelation } from "#server/domain/role-of-relation.ts";
import { RadioGroup } from "../shared/ui/RadioGroup.tsx";
import { TextField } from "../shared/ui/TextField.tsx";
import { ConditionField } from "./ConditionField.tsx";
import { type Corrected, except, redate, restore, restrengthen, retract } from "./corrections.ts";
import { MakeDraft } from "./MakeDraft.tsx";
import styles from "./proposals.module.css";

type What = "date" | "strength" | "exception" | "retract" | "restore";

const choicesFor = (
  claim: Claim,
): readonly { readonly id: What; readonly label: string; readonly beside: string }[] => [
  ...("when" in claim
    ? [{ id: "date" as const, label: "The date", beside: "it happened at another time" }]
    : []),
  { id: "strength", label: "How far it can be leaned on", beside: "more, or less" },
  { id: "exception", label: "An exception", beside: "where something else is seen, it says nothing" },
  claim.status === "accepted"
    ? { id: "retract", label: "All of it: retract", beside: "it stays to be read, and counts for nothing" }
    : { id: "restore", label: "That it does not count: restore", beside: "it counts again" },
];

const BASES = [
  { id: "common practice", label: "common practice", beside: "every workshop knows it" },
  { id: "from memory", label: "from memory", beside: "nobody has looked it up yet" },
] as const;

/** What can be put right of a claim, one thing at a time. */
export function ClaimCorrection({ claim, says }: { claim: Claim; says: string }) {
  const [what, setWhat] = useState<What>();
  const [when, setWhen] = useState("when" in claim ? (claim.when ?? "") : "");
  const [strength, setStrength] = useState<Strength>(claim.strength);
  const [condition, setCondition] = useState<{ readonly id: string; readonly label: string }>();
  const [basis, setBasis] = useState<(typeof BASES)[number]["id"]>("from memory");
  const dating = readDating(when.trim(), roleOfRelation(claim.relation));
  const corrected = (): Corrected | undefined => {
    if (what === "date" && !isProblem(dating)) return redate(claim, when.trim(), says);
    if (what === "strength" && strength !== claim.strength) return restrengthen(claim, strength, says);
    if (what === "exception" && condition)
      return except(claim, condition, basis, crypto.randomUUID().slice(0, 8));
    if (what === "retract") return retract(claim, says);
    return what === "restore" ? restore(claim, says) : undefined;
  };
  const made = corrected();
  return (
    <section className={styles["form"]} aria-label="What is wrong">
      <RadioGroup
        label="What is wrong?"
        direction="column"
        choices={choicesFor(claim)}
        value={what ?? null}
        onChange={setWhat}
      />
      {what === "date" ? (
        <TextField
          label="The right date"
          value={when}
          onChange={setWhen}
          hint="A year is 1765, about it 1765~, a span 1760/1780, a decade 176X."
          {...(isProblem(dating) ? { refusal: dating.message } : {})}
          autoComplete="off"
          spellCheck="false"
        />
      ) : null}
      {what === "strength" ? (
        <RadioGroup
          label="It is"
          choices={STRENGTHS.map((id) => ({ id, label: id }))}
          value={strength}
          onChange={setStrength}
        />
      ) : null}
      {what === "exception" ? (
        <>
          <ConditionField value={condition} onChange={setCondition} />
          <RadioGroup
            label="How is it known?"
            direction="column"
            choices={BASES}
            value={basis}
            onChange={setBasis}
          />
        </>
      ) : null}
      <MakeDraft
        made={made}
        isChosen={what !== undefined}
        hint="For whoever decides: what you saw or read, and where. It can be written later."
      />
    </section>
  );
}
