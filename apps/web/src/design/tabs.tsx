"use client";

import type { ReactNode } from "react";
import { Tabs as AriaTabs, Tab, TabList, TabPanel, TabPanels } from "react-aria-components";

interface TabsProps {
  readonly label: string;
  readonly tabs: readonly { readonly id: string; readonly title: string; readonly content: ReactNode }[];
  readonly defaultTab?: string;
}

/** Several sheets in one place, one in view. */
export function Tabs({ label, tabs, defaultTab }: TabsProps) {
  return (
    <AriaTabs {...(defaultTab === undefined ? {} : { defaultSelectedKey: defaultTab })}>
      <TabList className="tabs-list" aria-label={label}>
        {tabs.map((tab) => (
          <Tab key={tab.id} id={tab.id} className="tab">
            {tab.title}
          </Tab>
        ))}
      </TabList>
      <TabPanels>
        {tabs.map((tab) => (
          <TabPanel key={tab.id} id={tab.id} className="tab-panel">
            {tab.content}
          </TabPanel>
        ))}
      </TabPanels>
    </AriaTabs>
  );
}
