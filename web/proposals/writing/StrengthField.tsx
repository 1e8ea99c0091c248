import { ChoiceField } from "./ChoiceField.tsx";

const STRENGTHS = [
  { id: "certain", label: "Certain", beside: "could not be otherwise" },
  { id: "firm", label: "Firm", beside: "well shown" },
  { id: "usual", label: "Usual", beside: "with exceptions" },
  { id: "tentative", label: "Tentative", beside: "a guess worth testing" },
];

/** How far a claim can be leaned on. */
export const StrengthField = ({ label }: { label: string }) => (
  <ChoiceField of="strength" label={label} choices={STRENGTHS} />
);
