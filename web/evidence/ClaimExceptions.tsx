import { ClaimList } from "./ClaimList.tsx";
import type { ClaimPageQuery } from "./ClaimPage.graphql.ts";
import styles from "./ClaimPage.module.css";
import reading from "./reading.module.css";

type Claim = NonNullable<ClaimPageQuery["claim"]>;

/** What sets the claim aside, and for an exception the claim that it sets aside. */
export const ClaimExceptions = ({ claim }: { claim: Claim }) => (
  <>
    {claim.of ? (
      <section className={reading["section"]}>
        <h2>The claim it sets aside</h2>
        <ClaimList claims={[claim.of]} />
      </section>
    ) : null}
    {claim.exceptions.length > 0 ? (
      <section className={reading["section"]}>
        <h2>Exceptions</h2>
        <p className={styles["follows"]}>Where one of these is seen on the piece, the claim says nothing.</p>
        <ClaimList claims={claim.exceptions} />
      </section>
    ) : null}
  </>
);
