import { useQuery } from "@apollo/client/react";
import { useState } from "react";
import { useStep } from "../shared/apollo/use-step.ts";
import { Button } from "../shared/ui/Button.tsx";
import { Disclosure } from "../shared/ui/Disclosure.tsx";
import { TextField } from "../shared/ui/TextField.tsx";
import { TextLink } from "../shared/ui/TextLink.tsx";
import { outcomeWords } from "../shared/words/outcome-words.ts";
import { sayDay } from "../shared/words/say-day.ts";
import { sayPerson } from "../shared/words/say-person.ts";
import { DisputeClaimDocument, DisputesOfClaimDocument } from "./DisputesOfClaim.graphql.ts";
import styles from "./DisputesOfClaim.module.css";
import reading from "./reading.module.css";

/** Doubts of a claim, open ones and those that ended, whatever revision is read; and where a new one is brought up. */
export function DisputesOfClaim({ claim, isAccepted }: { claim: string; isAccepted: boolean }) {
  const { data, refetch } = useQuery(DisputesOfClaimDocument, {
    variables: { claim },
    fetchPolicy: "cache-and-network",
  });
  const disputes = data?.claim?.disputes ?? [];
  if (disputes.length === 0 && !isAccepted) return null;
  const open = data?.claim?.openDisputes ?? 0;
  return (
    <section className={reading["section"]} id="disputes" aria-labelledby="disputes-heading">
      <h2 id="disputes-heading">
        Disputes <span>· {open === 0 ? "none open" : `${open} open`}</span>
      </h2>
      {open > 0 ? (
        <p className={reading["empty"]}>
          Somebody doubts this claim. It counts as before until the dispute ends with a decision.
        </p>
      ) : null}
      <ul className={reading["list"]}>
        {disputes.map(({ id, says, at, by, decision }) => (
          <li key={id}>
            <p className={styles["says"]}>{says}</p>
            <p className={styles["beside"]}>
              {sayPerson(by)}, {sayDay(at)} ·{" "}
              {decision === null
                ? "open"
                : `ended ${sayDay(decision.at)}: ${outcomeWords[decision.outcome]}, by ${sayPerson(decision.by)}`}{" "}
              · <TextLink to={`/house/disputes/${id}`}>read and discuss it</TextLink>
            </p>
            {decision?.says ? <p className={styles["says"]}>{decision.says}</p> : null}
          </li>
        ))}
      </ul>
      {isAccepted ? <NewDispute claim={claim} onDone={() => void refetch()} /> : null}
    </section>
  );
}

function NewDispute({ claim, onDone }: { claim: string; onDone: () => void }) {
  const [isOpen, setOpen] = useState(false);
  const [says, setSays] = useState("");
  const { take, refused, isUnderWay } = useStep(DisputeClaimDocument);
  const dispute = async () => {
    if ((await take({ claim, says })) === undefined) return;
    setSays("");
    setOpen(false);
    onDone();
  };
  return (
    <div className={`${styles["new"]} screen-only`}>
      <Disclosure summary="Dispute this claim" isOpen={isOpen} onOpenChange={setOpen}>
        <div className={styles["form"]}>
          <TextField
            label="What is wrong with it, and how you know"
            value={says}
            onChange={setSays}
            lines={3}
            maxLength={5000}
            hint="It lowers nothing by itself. Others see it wherever the claim is shown, until somebody decides."
          />
          <div role="alert" className={styles["refusal"]}>
            {refused.map((message) => (
              <p key={message}>{message}</p>
            ))}
          </div>
          <Button isDisabled={isUnderWay || says.trim() === ""} onPress={() => void dispute()}>
            Bring it up
          </Button>
        </div>
      </Disclosure>
    </div>
  );
}
