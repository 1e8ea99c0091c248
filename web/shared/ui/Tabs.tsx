import { type ReactNode, useState } from "react";
import { Tabs as AriaTabs, Tab, TabList, TabPanel } from "react-aria-components/Tabs";
import styles from "./Tabs.module.css";

interface Props {
  /** Names the choice for those who do not see it. */
  label: string;
  tabs: readonly { readonly id: string; readonly label: string; readonly content: ReactNode }[];
}

/** Several sights of one thing, one at a time on the screen; all of them in print. */
export function Tabs({ label, tabs }: Props) {
  const [chosen, setChosen] = useState(tabs[0]?.id);
  const current = tabs.some((tab) => tab.id === chosen) ? chosen : tabs[0]?.id;
  return (
    <AriaTabs
      className={styles["tabs"] ?? ""}
      {...(current === undefined ? {} : { selectedKey: current })}
      onSelectionChange={(key) => setChosen(String(key))}
    >
      <TabList aria-label={label} className={styles["list"] ?? ""}>
        {tabs.map((tab) => (
          <Tab key={tab.id} id={tab.id} className={styles["tab"] ?? ""}>
            {tab.label}
          </Tab>
        ))}
      </TabList>
      {tabs.map((tab) =>
        tab.id === current ? (
          <TabPanel key={tab.id} id={tab.id} className={styles["panel"] ?? ""}>
            <p className={styles["printed"]}>{tab.label}</p>
            {tab.content}
          </TabPanel>
        ) : (
          // On paper only: as a panel of its own it would be searched for something to focus at every change.
          <div key={tab.id} className={styles["printed"]}>
            <p>{tab.label}</p>
            {tab.content}
          </div>
        ),
      )}
    </AriaTabs>
  );
}
