import type { ClaimLineFragment } from "../shared/claims/ClaimLine.graphql.ts";
import { ClaimLine } from "../shared/claims/ClaimLine.tsx";
import styles from "./reading.module.css";

/** Claims one below the other. */
export const ClaimList = ({ claims }: { claims: readonly ClaimLineFragment[] }) => (
  <ul className={styles["list"]}>
    {claims.map((claim) => (
      <li key={claim.id}>
        <ClaimLine claim={claim} />
      </li>
    ))}
  </ul>
);
