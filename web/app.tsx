import { type ComponentType, lazy, type ReactNode, Suspense } from "react";
import { Redirect, Route, Router, Switch } from "wouter";
import {
  useLocationInTransition,
  useSearchInTransition,
} from "./shared/navigation/use-location-in-transition.ts";
import { Arriving } from "./shared/ui/Arriving.tsx";
import { Frame } from "./shared/ui/Frame.tsx";
import { NotFoundPage } from "./shared/ui/NotFoundPage.tsx";
import { RouteBoundary } from "./shared/ui/RouteBoundary.tsx";
import { Waiting } from "./shared/ui/Waiting.tsx";

type IdPage = ComponentType<{ id: string }>;

const StartPage = lazy(async () => ({ default: (await import("./start/StartPage.tsx")).StartPage }));
const EvidencePage = lazy(async () => ({
  default: (await import("./evidence/EvidencePage.tsx")).EvidencePage,
}));
const DisagreementsPage = lazy(async () => ({
  default: (await import("./evidence/DisagreementsPage.tsx")).DisagreementsPage,
}));
const ImportPage = lazy(async () => ({ default: (await import("./evidence/ImportPage.tsx")).ImportPage }));
const LearnPage = lazy(async () => ({ default: (await import("./learn/LearnPage.tsx")).LearnPage }));
const MethodPage = lazy(async () => ({ default: (await import("./method/MethodPage.tsx")).MethodPage }));

const SheetsPage = lazy(async () => ({
  default: (await import("./field-sheets/SheetsPage.tsx")).SheetsPage,
}));
const WeighingMethodPage = lazy(async () => ({
  default: (await import("./method/WeighingMethodPage.tsx")).WeighingMethodPage,
}));
const PlanPage = lazy(async () => ({ default: (await import("./field-sheets/PlanPage.tsx")).PlanPage }));
const PartsPage = lazy(async () => ({ default: (await import("./evidence/PartsPage.tsx")).PartsPage }));
const RegionsPage = lazy(async () => ({
  default: (await import("./regional-forms/RegionsPage.tsx")).RegionsPage,
}));
const ComparePage = lazy(async () => ({
  default: (await import("./regional-forms/ComparePage.tsx")).ComparePage,
}));

const SignInPage = lazy(async () => ({ default: (await import("./account/SignInPage.tsx")).SignInPage }));
const InvitationPage = lazy(async () => ({
  default: (await import("./account/InvitationPage.tsx")).InvitationPage,
}));
const ElsewherePage = lazy(async () => ({
  default: (await import("./account/ElsewherePage.tsx")).ElsewherePage,
}));
const NewStartPage = lazy(async () => ({
  default: (await import("./account/NewStartPage.tsx")).NewStartPage,
}));
const AccountPage = lazy(async () => ({ default: (await import("./account/AccountPage.tsx")).AccountPage }));
const PeoplePage = lazy(async () => ({ default: (await import("./account/PeoplePage.tsx")).PeoplePage }));
const AuditPage = lazy(async () => ({ default: (await import("./account/AuditPage.tsx")).AuditPage }));

const DigestPage = lazy(async () => ({ default: (await import("./chronicle/DigestPage.tsx")).DigestPage }));
const HistoryPage = lazy(async () => ({
  default: (await import("./chronicle/HistoryPage.tsx")).HistoryPage,
}));
const SharingPage = lazy(async () => ({
  default: (await import("./chronicle/SharingPage.tsx")).SharingPage,
}));
const ProofPage = lazy(async () => ({ default: (await import("./chronicle/ProofPage.tsx")).ProofPage }));
const HousePage = lazy(async () => ({ default: (await import("./house/HousePage.tsx")).HousePage }));
const DisputesPage = lazy(async () => ({
  default: (await import("./proposals/DisputesPage.tsx")).DisputesPage,
}));
const ProposePage = lazy(async () => ({
  default: (await import("./proposals/writing/ProposePage.tsx")).ProposePage,
}));
const ProposalsPage = lazy(async () => ({
  default: (await import("./proposals/ProposalsPage.tsx")).ProposalsPage,
}));

/** A page of one thing that can be read as of a revision. */
const asOf = (load: () => Promise<IdPage>): IdPage =>
  lazy(async () => {
    const [{ ReadAsOf }, page] = await Promise.all([import("./evidence/history/ReadAsOf.tsx"), load()]);
    return { default: ({ id }) => <ReadAsOf id={id} page={page} /> };
  });

/** Pages that read one thing by its id. */
const idPages: Readonly<Record<string, IdPage>> = {
  "/pieces/:id": lazy(async () => ({
    default: (await import("./examination/ExaminationPage.tsx")).ExaminationPage,
  })),
  "/terms/:id/around": asOf(async () => (await import("./evidence/AroundPage.tsx")).AroundPage),
  "/terms/:id": asOf(async () => (await import("./evidence/TermPage.tsx")).TermPage),
  "/claims/:id": asOf(async () => (await import("./evidence/ClaimPage.tsx")).ClaimPage),
  "/evidence/disagreements/:id": lazy(async () => ({
    default: (await import("./evidence/DisagreementRulePage.tsx")).DisagreementRulePage,
  })),
  "/regions/:id": lazy(async () => ({
    default: (await import("./regional-forms/RegionPage.tsx")).RegionPage,
  })),
  "/learn/:id": lazy(async () => ({ default: (await import("./learn/LessonPage.tsx")).LessonPage })),
  "/sheets/:id": lazy(async () => ({ default: (await import("./field-sheets/SheetPage.tsx")).SheetPage })),
  "/house/proposals/:id": lazy(async () => ({
    default: (await import("./proposals/ProposalPage.tsx")).ProposalPage,
  })),
  "/house/disputes/:id": lazy(async () => ({
    default: (await import("./proposals/DisputePage.tsx")).DisputePage,
  })),
  "/sources/:id": asOf(async () => (await import("./evidence/SourcePage.tsx")).SourcePage),
};

/** What a page is drawn in: its failure stays its own. */
const onPage = (page: ReactNode, key: string) => <RouteBoundary key={key}>{page}</RouteBoundary>;

const WAITING = <Waiting what="the page" isPage />;

/** All routes, inside the frame that every page shares. */
export const App = () => (
  <Router hook={useLocationInTransition} searchHook={useSearchInTransition}>
    <Frame>
      <Suspense fallback={WAITING}>
        <Arriving until={WAITING}>
          <Switch>
            <Route path="/">{onPage(<StartPage />, "start")}</Route>
            <Route path="/regions/compare">{onPage(<ComparePage />, "compare")}</Route>
            {Object.entries(idPages).map(([path, Page]) => (
              <Route key={path} path={path}>
                {({ id = "" }: { id?: string }) => onPage(<Page key={id} id={id} />, id)}
              </Route>
            ))}
            <Route path="/evidence">{onPage(<EvidencePage />, "evidence")}</Route>
            <Route path="/evidence/disagreements">{onPage(<DisagreementsPage />, "disagreements")}</Route>
            <Route path="/evidence/parts">{onPage(<PartsPage />, "parts")}</Route>
            <Route path="/regions">{onPage(<RegionsPage />, "regions")}</Route>
            <Route path="/evidence/sources/import">{onPage(<ImportPage />, "import")}</Route>
            <Route path="/revisions">
              <Redirect to="/house/history" replace />
            </Route>
            <Route path="/learn">{onPage(<LearnPage />, "learn")}</Route>
            <Route path="/sheets">{onPage(<SheetsPage />, "sheets")}</Route>
            <Route path="/plan">{onPage(<PlanPage />, "plan")}</Route>
            <Route path="/sign-in">{onPage(<SignInPage />, "sign-in")}</Route>
            <Route path="/sign-in/elsewhere">{onPage(<ElsewherePage />, "elsewhere")}</Route>
            <Route path="/new-password">{onPage(<NewStartPage />, "new-password")}</Route>
            <Route path="/set-up">{onPage(<InvitationPage isFirst />, "set-up")}</Route>
            <Route path="/invitation">{onPage(<InvitationPage />, "invitation")}</Route>
            <Route path="/account">{onPage(<AccountPage />, "account")}</Route>
            <Route path="/people">{onPage(<PeoplePage />, "people")}</Route>
            <Route path="/audit">{onPage(<AuditPage />, "audit")}</Route>
            <Route path="/house/history">{onPage(<HistoryPage />, "history")}</Route>
            <Route path="/house/digest">{onPage(<DigestPage />, "digest")}</Route>
            <Route path="/house/sharing">{onPage(<SharingPage />, "sharing")}</Route>
            <Route path="/house/proof">{onPage(<ProofPage />, "proof")}</Route>
            <Route path="/house">{onPage(<HousePage />, "house")}</Route>
            <Route path="/house/disputes">{onPage(<DisputesPage />, "disputes of claims")}</Route>
            <Route path="/house/propose">{onPage(<ProposePage />, "propose")}</Route>
            <Route path="/house/proposals">{onPage(<ProposalsPage />, "proposals")}</Route>
            <Route path="/method/weighing">{onPage(<WeighingMethodPage />, "weighing")}</Route>
            <Route path="/method">{onPage(<MethodPage />, "method")}</Route>
            <Route>
              <NotFoundPage />
            </Route>
          </Switch>
        </Arriving>
      </Suspense>
    </Frame>
  </Router>
);
