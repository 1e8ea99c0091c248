import { memo } from "react";
import type { Report } from "#server/domain/report.ts";
import { Disclosure } from "#web/shared/ui/Disclosure.tsx";
import { TextLink } from "#web/shared/ui/TextLink.tsx";
import styles from "./ConclusionsColumn.module.css";

type Props = Pick<Report, "assumptions" | "neighbourhood" | "engine" | "revision">;

/** The numbers the answer takes for granted, named as such. */
export const Assumed = memo(function Assumed({ assumptions, neighbourhood, engine, revision }: Props) {
  return (
    <Disclosure summary="What is assumed, not cited" level={2}>
      <ul className={styles["list"]}>
        <li>
          “About” widens a year or decade by {assumptions.padYear} years either way, a century by{" "}
          {assumptions.padCentury}.
        </li>
        <li>
          Chains are followed over at most {assumptions.maxDepth} steps; {assumptions.pathsListed} paths of a
          finding are listed, the others counted.
        </li>
        <li>
          Read for this answer: {neighbourhood.terms} terms, {neighbourhood.claims} claims,{" "}
          {neighbourhood.paths} paths; revision {revision}; {engine}.
        </li>
        <li>
          <TextLink to="/method">How it reasons</TextLink>
        </li>
      </ul>
    </Disclosure>
  );
});
