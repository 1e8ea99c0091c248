import type { ReactNode } from "react";
import { Tabs as AriaTabs, Tab, TabList, TabPanel } from "react-aria-components/Tabs";
import styles from "./Tabs.module.css";

interface Props {
  /** Names the choice for those who do not see it. */
  label: string;
  tabs: readonly { readonly id: string; readonly label: string; readonly content: ReactNode }[];
}

/** Several sights of one thing, one at a time on the screen; all of them in print. */
export const Tabs = ({ label, tabs }: Props) => (
  <AriaTabs className={styles["tabs"] ?? ""}>
    <TabList aria-label={label} className={styles["list"] ?? ""}>
      {tabs.map((tab) => (
        <Tab key={tab.id} id={tab.id} className={styles["tab"] ?? ""}>
          {tab.label}
        </Tab>
      ))}
    </TabList>
    {tabs.map((tab) => (
      <TabPanel key={tab.id} id={tab.id} shouldForceMount className={styles["panel"] ?? ""}>
        <p className={styles["printed"]}>{tab.label}</p>
        {tab.content}
      </TabPanel>
    ))}
  </AriaTabs>
);
