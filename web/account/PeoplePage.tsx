import { useState } from "react";
import { ROLES, type Role } from "#server/domain/people/caller.ts";
import { Refusals } from "#web/shared/asking/Refusals.tsx";
import { Button } from "../shared/ui/Button.tsx";
import { InTheHouse } from "../shared/ui/InTheHouse.tsx";
import { PageHeading } from "../shared/ui/PageHeading.tsx";
import { Select } from "../shared/ui/Select.tsx";
import { Waiting } from "../shared/ui/Waiting.tsx";
import styles from "./account.module.css";
import { type Answered, askAccount, type Who } from "./ask-account.ts";
import { NewInvitation } from "./NewInvitation.tsx";
import { PersonActs } from "./PersonActs.tsx";
import { useAsked } from "./use-asked.ts";

interface Someone {
  readonly id: string;
  readonly name: string;
  readonly role: Role;
  readonly state: "active" | "shut out";
  readonly version: number;
}
const CHOICES = ROLES.map((id) => ({ id, label: id }));

/** Who has an account in the house. Owners invite, give roles and shut out. */
export function PeoplePage() {
  const { answer: who } = useAsked<Who>("who");
  const { answer: list, again } = useAsked<{ people: readonly Someone[] }>("people");
  const [changed, setChanged] = useState<Answered<unknown>>();
  if (who === undefined || list === undefined) return <Waiting what="the people" isPage />;
  const isOwner = "done" in who && who.done.caller?.role === "owner" && who.done.accounts;
  const change = async ({ id, version }: Someone, what: Partial<Pick<Someone, "role" | "state">>) => {
    setChanged(await askAccount("change-person", { id, expectedVersion: version, ...what }));
    await again();
  };
  return (
    <article className={styles["page"]}>
      <InTheHouse />
      <PageHeading title="People">The people of this house</PageHeading>
      <p className={styles["note"]}>
        Readers read; contributors record examinations and make proposals; reviewers decide on them; owners
        see to people.
      </p>
      <Refusals answer={"refused" in list ? list : changed} />
      <ul className={styles["list"]}>
        {("done" in list ? list.done.people : []).map((one) => (
          <li key={one.id} className={`${styles["item"]} ${styles["person"]}`}>
            <span>
              {one.name}
              <span className={styles["beside"]}>
                {" "}
                {isOwner ? "" : one.role}
                {one.state === "shut out" ? " shut out" : ""}
              </span>
            </span>
            {isOwner ? (
              <div className={styles["acts"]}>
                <Select
                  label={`Role of ${one.name}`}
                  choices={CHOICES}
                  value={one.role}
                  onChange={(role) => change(one, { role })}
                />
                <Button
                  onPress={() => change(one, { state: one.state === "active" ? "shut out" : "active" })}
                >
                  {one.state === "active" ? "Shut out" : "Let in again"}
                  <span className="visually-hidden"> {one.name}</span>
                </Button>
              </div>
            ) : null}
            {isOwner ? <PersonActs {...one} onChanged={again} /> : null}
          </li>
        ))}
      </ul>
      {isOwner ? <NewInvitation /> : null}
    </article>
  );
}
