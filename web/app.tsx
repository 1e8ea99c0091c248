import { type ComponentType, lazy, type ReactNode, Suspense } from "react";
import { Route, Router, Switch } from "wouter";
import {
  useLocationInTransition,
  useSearchInTransition,
} from "./shared/navigation/use-location-in-transition.ts";
import { Frame } from "./shared/ui/Frame.tsx";
import { NotFoundPage } from "./shared/ui/NotFoundPage.tsx";
import { RouteBoundary } from "./shared/ui/RouteBoundary.tsx";
import { Waiting } from "./shared/ui/Waiting.tsx";

type IdPage = ComponentType<{ id: string }>;

const StartPage = lazy(async () => ({ default: (await import("./start/StartPage.tsx")).StartPage }));
const EvidencePage = lazy(async () => ({
  default: (await import("./evidence/EvidencePage.tsx")).EvidencePage,
}));
const ImportPage = lazy(async () => ({ default: (await import("./evidence/ImportPage.tsx")).ImportPage }));
const RevisionsPage = lazy(async () => ({
  default: (await import("./evidence/RevisionsPage.tsx")).RevisionsPage,
}));
const MethodPage = lazy(async () => ({ default: (await import("./method/MethodPage.tsx")).MethodPage }));

/** Pages that read one thing by its id. */
const idPages: Readonly<Record<string, IdPage>> = {
  "/pieces/:id": lazy(async () => ({
    default: (await import("./examination/ExaminationPage.tsx")).ExaminationPage,
  })),
  "/terms/:id": lazy(async () => ({ default: (await import("./evidence/TermPage.tsx")).TermPage })),
  "/claims/:id": lazy(async () => ({ default: (await import("./evidence/ClaimPage.tsx")).ClaimPage })),
  "/sources/:id": lazy(async () => ({ default: (await import("./evidence/SourcePage.tsx")).SourcePage })),
};

/** What a page is drawn in: its failure stays its own. */
const onPage = (page: ReactNode, key: string) => <RouteBoundary key={key}>{page}</RouteBoundary>;

/** All routes, inside the frame that every page shares. */
export const App = () => (
  <Router hook={useLocationInTransition} searchHook={useSearchInTransition}>
    <Frame>
      <Suspense fallback={<Waiting what="the page" />}>
        <Switch>
          <Route path="/">{onPage(<StartPage />, "start")}</Route>
          {Object.entries(idPages).map(([path, Page]) => (
            <Route key={path} path={path}>
              {({ id = "" }: { id?: string }) => onPage(<Page key={id} id={id} />, id)}
            </Route>
          ))}
          <Route path="/evidence">{onPage(<EvidencePage />, "evidence")}</Route>
          <Route path="/evidence/sources/import">{onPage(<ImportPage />, "import")}</Route>
          <Route path="/revisions">{onPage(<RevisionsPage />, "revisions")}</Route>
          <Route path="/method">{onPage(<MethodPage />, "method")}</Route>
          <Route>
            <NotFoundPage />
          </Route>
        </Switch>
      </Suspense>
    </Frame>
  </Router>
);
