import { useState } from "react";
import { useStep } from "../shared/apollo/use-step.ts";
import { Button } from "../shared/ui/Button.tsx";
import { TextField } from "../shared/ui/TextField.tsx";
import { TextLink } from "../shared/ui/TextLink.tsx";
import {
  ChangeProposalDocument,
  OpenProposalDocument,
  type ProposalFieldsFragment,
  WithdrawProposalDocument,
} from "./ProposalPage.graphql.ts";
import styles from "./proposals.module.css";
import { Refusals } from "./Refusals.tsx";

/** What its maker does: say it otherwise, hand it to the reviewers, take it back. */
export function OwnSteps({ proposal }: { proposal: ProposalFieldsFragment }) {
  const { id, version: on, state } = proposal;
  const [title, setTitle] = useState(proposal.title);
  const [why, setWhy] = useState(proposal.why);
  const change = useStep(ChangeProposalDocument);
  const open = useStep(OpenProposalDocument);
  const withdraw = useStep(WithdrawProposalDocument);
  const isChanged = title !== proposal.title || why !== proposal.why;
  const changes = { title, why };
  const isUnderWay = change.isUnderWay || open.isUnderWay || withdraw.isUnderWay;
  return (
    <section className={styles["form"]} aria-labelledby="own">
      <h2 id="own">{state === "DRAFT" ? "Your draft" : "Your proposal"}</h2>
      {proposal.form === null ? null : (
        <p>
          <TextLink to={`/house/propose?draft=${id}`}>Go on in the form it is written in</TextLink>
        </p>
      )}
      <TextField label="In a few words" value={title} onChange={setTitle} maxLength={200} />
      <TextField
        label="Why the evidence should change"
        value={why}
        onChange={setWhy}
        lines={4}
        maxLength={5000}
        hint="For whoever decides: what you saw or read, and where."
      />
      <Refusals of={[change, open, withdraw]} />
      <div className={styles["acts"]}>
        {state === "OPEN" ? null : (
          <Button look="main" isDisabled={isUnderWay} onPress={() => void open.take({ id, on, changes })}>
            Hand it to the reviewers
          </Button>
        )}
        <Button isDisabled={isUnderWay || !isChanged} onPress={() => void change.take({ id, on, changes })}>
          {state === "DRAFT" ? "Keep the draft" : "Keep the change"}
        </Button>
        <Button look="quiet" isDisabled={isUnderWay} onPress={() => void withdraw.take({ id, on })}>
          Take it back
        </Button>
      </div>
      <p className={styles["beside"]}>
        {state === "DRAFT"
          ? "Nobody else sees a draft. It is kept here until you hand it in."
          : "A change makes a new version: what reviewers said of an earlier one does not count for it."}
      </p>
    </section>
  );
}
