import { useState } from "react";
import type { DisputeOutcome } from "../shared/apollo/schema-types.graphql.ts";
import { useStep } from "../shared/apollo/use-step.ts";
import { Button } from "../shared/ui/Button.tsx";
import { RadioGroup } from "../shared/ui/RadioGroup.tsx";
import { TextField } from "../shared/ui/TextField.tsx";
import { TextLink } from "../shared/ui/TextLink.tsx";
import { Told } from "../shared/ui/Told.tsx";
import { type DisputeFieldsFragment, EndDisputeDocument } from "./DisputePage.graphql.ts";
import { LeftUnsaid } from "./LeftUnsaid.tsx";
import styles from "./proposals.module.css";
import { Refusals } from "./Refusals.tsx";

const CHOICES: readonly { readonly id: DisputeOutcome; readonly label: string; readonly beside: string }[] = [
  { id: "STANDS", label: "The claim stands", beside: "the doubt did not hold" },
  { id: "CORRECTED", label: "It was corrected", beside: "an accepted proposal put it right" },
  { id: "RETRACTED", label: "It was retracted", beside: "an accepted proposal took it out" },
];
const TAKE_BACK = { id: "TAKEN_BACK", label: "I take it back", beside: "you brought it up" } as const;

interface Props {
  dispute: DisputeFieldsFragment;
  onSaid: () => void;
}

/** Ends a dispute with a decision that stays. What the claim says is changed by a proposal, not here. */
export function EndDispute({ dispute: { id, version: on, claimId, isMine, decision }, onSaid }: Props) {
  const [outcome, setOutcome] = useState<DisputeOutcome>();
  const [says, setSays] = useState("");
  const [told, setTold] = useState("");
  const step = useStep(EndDisputeDocument);
  const end = async (chosen: DisputeOutcome) => {
    if (!(await step.take({ id, on, outcome: chosen, says }))) return;
    setSays("");
    setTold("The dispute is ended. The decision stays with the claim.");
  };
  if (decision !== null)
    return (
      <>
        {told === "" ? null : <Told>{told}</Told>}
        <LeftUnsaid on={id} text={says} onSaid={onSaid} onGone={() => setSays("")} />
      </>
    );
  return (
    <section className={styles["form"]} aria-labelledby="end">
      <h2 id="end">End it</h2>
      <p className={styles["beside"]}>
        A decision is a reviewer's. What the claim says is changed by{" "}
        <TextLink to={`/house/propose?kind=correction&about=${claimId}`}>a correction of it</TextLink>.
      </p>
      <RadioGroup
        label="How it ends"
        direction="column"
        choices={isMine ? [...CHOICES, TAKE_BACK] : CHOICES}
        value={outcome ?? null}
        onChange={setOutcome}
      />
      {outcome === undefined ? null : (
        <TextField label="Why" value={says} onChange={setSays} lines={3} maxLength={5000} />
      )}
      <Refusals of={[step]} />
      <div className={styles["acts"]}>
        <Button
          look="main"
          isDisabled={outcome === undefined || step.isUnderWay}
          onPress={() => outcome && void end(outcome)}
        >
          End the dispute
        </Button>
      </div>
    </section>
  );
}
