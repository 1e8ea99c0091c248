import { TextLink } from "../ui/TextLink.tsx";
import styles from "./DisputedMark.module.css";

interface Props {
  claim: { readonly id: string; readonly openDisputes: number } | undefined;
}

/** Stands beside a claim that somebody doubts openly, and leads to the doubt; the claim counts as before. */
export const DisputedMark = ({ claim }: Props) =>
  claim === undefined || claim.openDisputes === 0 ? null : (
    <TextLink to={`/claims/${claim.id}#disputes`} className={styles["mark"] ?? ""}>
      disputed
    </TextLink>
  );
