import { useState } from "react";
import type { ProposalStep, Verdict } from "../shared/apollo/schema-types.graphql.ts";
import { useStep } from "../shared/apollo/use-step.ts";
import { Button } from "../shared/ui/Button.tsx";
import { RadioGroup } from "../shared/ui/RadioGroup.tsx";
import { TextField } from "../shared/ui/TextField.tsx";
import { Told } from "../shared/ui/Told.tsx";
import { LeftUnsaid } from "./LeftUnsaid.tsx";
import { DecideOnProposalDocument, type ProposalFieldsFragment } from "./ProposalPage.graphql.ts";
import styles from "./proposals.module.css";
import { Refusals } from "./Refusals.tsx";

const CHOICES: readonly {
  readonly id: Verdict & ProposalStep;
  readonly label: string;
  readonly beside: string;
}[] = [
  { id: "ACCEPT", label: "Accept", beside: "it becomes a revision under its maker's name" },
  { id: "ASK_FOR_CHANGES", label: "Ask for changes", beside: "its maker can hand it in again" },
  { id: "DECLINE", label: "Decline", beside: "it ends; reason and talk stay" },
  { id: "SUPERSEDE", label: "Supersede", beside: "another proposal takes its place" },
];
const DONE: Readonly<Record<Verdict, string>> = {
  ACCEPT: "Accepted.",
  ASK_FOR_CHANGES: "Changes are asked for.",
  DECLINE: "Declined.",
  SUPERSEDE: "Superseded.",
};

interface Props {
  proposal: ProposalFieldsFragment;
  /** It was decided, by whomever: what one was writing stays. */
  isOver: boolean;
  onSaid: () => void;
}

/** What a reviewer decides, on the version that is on the screen; where one may not, why not. */
export function VerdictForm({ proposal, isOver, onSaid }: Props) {
  const refusedOf = new Map(proposal.may.map(({ step, refused }) => [step, refused]));
  const open = CHOICES.filter(({ id }) => refusedOf.get(id) === null);
  const [verdict, setVerdict] = useState<Verdict>();
  const [reason, setReason] = useState("");
  const [successor, setSuccessor] = useState("");
  const [told, setTold] = useState("");
  const step = useStep(DecideOnProposalDocument);
  const reasons = [...new Set(CHOICES.map(({ id }) => refusedOf.get(id)).filter((one) => one != null))];
  const decide = async (chosen: Verdict) => {
    setTold("");
    const given = await step.take({
      ...{ id: proposal.id, on: proposal.version, verdict: chosen, reason },
      supersededBy: chosen === "SUPERSEDE" ? successor.trim().replace(/^.*\//, "") : null,
    });
    if (given === undefined) return;
    const { stillNeeded = 0 } = given as { readonly stillNeeded?: number };
    setTold(
      stillNeeded > 0
        ? `You agreed. It moves so many conclusions that ${stillNeeded === 1 ? "one more reviewer" : `${stillNeeded} more reviewers`} must agree.`
        : DONE[chosen],
    );
    setReason("");
    setVerdict(undefined);
  };
  if (isOver && reason.trim() === "" && told === "") return null;
  return (
    <section className={styles["form"]} aria-labelledby="decide">
      <h2 id="decide">{isOver ? "Decided" : "Decide"}</h2>
      {told === "" ? null : <Told>{told}</Told>}
      {isOver ? (
        <LeftUnsaid on={proposal.id} text={reason} onSaid={onSaid} onGone={() => setReason("")} />
      ) : null}
      {isOver ? null : open.length === 0 ? (
        reasons.map((why) => <p key={why}>{why}</p>)
      ) : (
        <>
          <RadioGroup
            label="What you make of it"
            direction="column"
            choices={open}
            value={verdict ?? null}
            onChange={setVerdict}
          />
          {verdict === "SUPERSEDE" ? (
            <TextField
              label="The proposal that takes its place"
              value={successor}
              onChange={setSuccessor}
              hint="Its address, or the last part of it: proposal.2026-…"
            />
          ) : null}
          {verdict === undefined ? null : (
            <TextField
              label={verdict === "ACCEPT" ? "A word to it, if you like" : "Why"}
              value={reason}
              onChange={setReason}
              lines={3}
              maxLength={5000}
            />
          )}
          <Refusals of={[step]} />
          <div className={styles["acts"]}>
            <Button
              look="main"
              isDisabled={verdict === undefined || step.isUnderWay}
              onPress={() => verdict && void decide(verdict)}
            >
              {CHOICES.find(({ id }) => id === verdict)?.label ?? "Decide"}
            </Button>
          </div>
        </>
      )}
    </section>
  );
}
