import type { ReactNode } from "react";
import { TextLink } from "../shared/ui/TextLink.tsx";
import { hardnessWords, statusWords, strengthWords } from "../shared/words/claim-words.ts";
import type { ClaimPageQuery } from "./ClaimPage.graphql.ts";
import styles from "./reading.module.css";
import { sayWeight } from "./say-weight.ts";

type Claim = NonNullable<ClaimPageQuery["claim"]>;
type Named = { readonly id: string; readonly label: string } | null;

const scoped = (name: string, term: Named, otherwise: string): ReactNode => (
  <li>
    {name} {term ? <TextLink to={`/terms/${term.id}`}>{term.label}</TextLink> : otherwise}
  </li>
);

/** What stands beside a claim: where it holds, how far it can be leaned on, how it stands. */
export const ClaimMargin = ({ claim }: { claim: Claim }) => (
  <dl className={styles["margin"]}>
    <div>
      <dt>Where it holds</dt>
      <dd>
        <ul>
          {scoped("in", claim.region, "every region")}
          {scoped("on", claim.form, "furniture of every form")}
          {scoped("for", claim.part, "every part")}
        </ul>
      </dd>
    </div>
    <div>
      <dt>How far it can be leaned on</dt>
      <dd>
        {strengthWords[claim.strength]}
        {claim.hardness ? (
          <>
            , {hardnessWords[claim.hardness]}
            <small>{sayWeight(claim.relation, claim.hardness, claim.closed)}</small>
          </>
        ) : null}
      </dd>
    </div>
    <div>
      <dt>Standing</dt>
      <dd>{statusWords[claim.status]}</dd>
    </div>
    <div>
      <dt>Id</dt>
      <dd>
        <code>{claim.id}</code>
        {claim.row ? <small>modelled from row {claim.row} of the register</small> : null}
      </dd>
    </div>
  </dl>
);
