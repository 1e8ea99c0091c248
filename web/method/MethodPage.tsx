import { PageHeading } from "../shared/ui/PageHeading.tsx";

/** What the engine assumes, and the cautions. */
export const MethodPage = () => (
  <>
    <PageHeading title="Method">How a finding is made, and what it is not</PageHeading>
    <h2 id="cautions">Cautions</h2>
    <p>Findings are evidence, not a certificate or a valuation.</p>
  </>
);
