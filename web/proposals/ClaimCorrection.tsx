import { useState } from "react";
import { type Claim, STRENGTHS, type Strength } from "#server/domain/claim.ts";
import { isProblem } from "#server/domain/problem.ts";
import { readDating } from "#server/domain/read-dating.ts";
import { roleOfRelation } from "#server/domain/role-of-relation.ts";
import { Button } from "../shared/ui/Button.tsx";
import { RadioGroup } from "../shared/ui/RadioGroup.tsx";
import { TextField } from "../shared/ui/TextField.tsx";
import { ConditionField } from "./ConditionField.tsx";
import { type Corrected, except, redate, restore, restrengthen, retract } from "./corrections.ts";
import styles from "./proposals.module.css";
import { Refusals } from "./Refusals.tsx";
import { useMakeDraft } from "./use-make-draft.ts";

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
  const { make, step, why, setWhy } = useMakeDraft();
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
      {what === undefined ? null : (
        <TextField
          label="Why"
          value={why}
          onChange={setWhy}
          lines={4}
          maxLength={5000}
          hint="For whoever decides: what you saw or read, and where. It can be written later."
        />
      )}
      <Refusals of={[step]} />
      <Button
        look="main"
        isDisabled={made === undefined || step.isUnderWay}
        onPress={() => made && void make(made)}
      >
        Make a draft and see what it would do
      </Button>
    </section>
  );
}
