import { useState } from "react";
import { useLocation } from "wouter";
import { useStep } from "../shared/apollo/use-step.ts";
import { MakeProposalDocument } from "./CorrectionPage.graphql.ts";
import type { Corrected } from "./corrections.ts";

/** Keeps a correction as a draft and opens it. */
export function useMakeDraft() {
  const [, navigate] = useLocation();
  const step = useStep(MakeProposalDocument);
  const [why, setWhy] = useState("");
  const make = async ({ kind, title, change }: Corrected) => {
    const input = { kind, title: [...title].slice(0, 200).join(""), why, change, base: null };
    const given = await step.take({ input, open: false });
    const made = given as { readonly proposal?: { readonly id: string } } | undefined;
    if (made?.proposal) navigate(`/house/proposals/${made.proposal.id}`);
  };
  return { make, step, why, setWhy };
}
