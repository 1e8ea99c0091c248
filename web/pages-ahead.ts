/**
 * The modules that a page is made of, by its route: the server names their files in the answer that brings the document,
 * so that they are on their way before the first script runs. Routes are those of `app.tsx`, modules stand below `web`.
 */
export const PAGES_AHEAD: Readonly<Record<string, readonly string[]>> = {
  "/": ["start/StartPage.tsx"],
  "/pieces/:id": ["examination/ExaminationPage.tsx"],
  "/evidence": ["evidence/EvidencePage.tsx"],
  "/evidence/disagreements": ["evidence/DisagreementsPage.tsx"],
  "/evidence/disagreements/:id": ["evidence/DisagreementRulePage.tsx"],
  "/evidence/parts": ["evidence/PartsPage.tsx"],
  "/evidence/sources/import": ["evidence/ImportPage.tsx"],
  "/terms/:id": ["evidence/history/ReadAsOf.tsx", "evidence/TermPage.tsx"],
  "/terms/:id/around": ["evidence/history/ReadAsOf.tsx", "evidence/AroundPage.tsx"],
  "/claims/:id": ["evidence/history/ReadAsOf.tsx", "evidence/ClaimPage.tsx"],
  "/sources/:id": ["evidence/history/ReadAsOf.tsx", "evidence/SourcePage.tsx"],
  "/regions": ["regional-forms/RegionsPage.tsx"],
  "/regions/compare": ["regional-forms/ComparePage.tsx"],
  "/regions/:id": ["regional-forms/RegionPage.tsx"],
  "/revisions": ["evidence/RevisionsPage.tsx"],
  "/learn": ["learn/LearnPage.tsx"],
  "/learn/:id": ["learn/LessonPage.tsx"],
  "/sheets": ["field-sheets/SheetsPage.tsx"],
  "/sheets/:id": ["field-sheets/SheetPage.tsx"],
  "/plan": ["field-sheets/PlanPage.tsx"],
  "/method/weighing": ["method/WeighingMethodPage.tsx"],
  "/method": ["method/MethodPage.tsx"],
};
