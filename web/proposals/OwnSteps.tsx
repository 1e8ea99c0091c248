import { useState } from "react";
import { useStep } from "../shared/apollo/use-step.ts";
import { Button } from "../shared/ui/Button.tsx";
import { TextField } from "../shared/ui/TextField.tsx";
import { TextLink } from "../shared/ui/TextLink.tsx";
import { Told } from "../shared/ui/Told.tsx";
import {
  ChangeProposalDocument,
  OpenProposalDocument,
  type ProposalFieldsFragment,
  WithdrawProposalDocument,
} from "./ProposalPage.graphql.ts";
import styles from "./proposals.module.css";
import { Refusals } from "./Refusals.tsx";
import { useTextThatStays } from "./use-text-that-stays.ts";

/** What its maker does: say it otherwise, hand it to the reviewers, take it back. */
export function OwnSteps({ proposal }: { proposal: ProposalFieldsFragment }) {
  const { id, version: on, state } = proposal;
  const title = useTextThatStays(proposal.title);
  const why = useTextThatStays(proposal.why);
  const change = useStep(ChangeProposalDocument);
  const open = useStep(OpenProposalDocument);
  const withdraw = useStep(WithdrawProposalDocument);
  const [told, setTold] = useState("");
  const [hasTried, setHasTried] = useState(false);
  const isChanged = title.text !== proposal.title || why.text !== proposal.why;
  const changes = { title: title.text, why: why.text };
  const isUnderWay = change.isUnderWay || open.isUnderWay || withdraw.isUnderWay;
  const handIn = async () => {
    setHasTried(true);
    setTold("");
    if (why.text.trim() === "") return;
    if (await open.take({ id, on, changes }))
      setTold("It is with the reviewers. You are told on the page of the house when somebody answers.");
  };
  const keep = async () => {
    setTold("");
    if (await change.take({ id, on, changes })) setTold("Kept.");
  };
  return (
    <section className={styles["form"]} aria-labelledby="own">
      <h2 id="own">{state === "DRAFT" ? "Your draft" : "Your proposal"}</h2>
      {told === "" ? null : <Told key={told}>{told}</Told>}
      {proposal.form === null ? null : (
        <p>
          <TextLink to={`/house/propose?draft=${id}`}>Go on in the form it is written in</TextLink>
        </p>
      )}
      <TextField label="In a few words" value={title.text} onChange={title.type} maxLength={200} />
      <KeptElsewhere text={title.elsewhere} />
      <TextField
        label="Why the evidence should change"
        value={why.text}
        onChange={why.type}
        lines={4}
        maxLength={5000}
        hint="For whoever decides: what you saw or read, and where."
        {...(hasTried && why.text.trim() === "" ? { refusal: "Say why, so that others can decide." } : {})}
      />
      <KeptElsewhere text={why.elsewhere} />
      <Refusals of={[change, open, withdraw]} />
      <div className={styles["acts"]}>
        {state === "OPEN" ? null : (
          <Button look="main" isDisabled={isUnderWay} onPress={() => void handIn()}>
            Hand it to the reviewers
          </Button>
        )}
        <Button isDisabled={isUnderWay || !isChanged} onPress={() => void keep()}>
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

/** What stands now of a field that was changed in two windows; keeping what is typed here takes its place. */
const KeptElsewhere = ({ text }: { text: string | undefined }) =>
  text === undefined ? null : (
    <p className={styles["beside"]}>In another window it was changed meanwhile to: “{text}”.</p>
  );
