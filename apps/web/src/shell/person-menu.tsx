"use client";

import { startTransition, useState } from "react";
import { Header, Menu, MenuItem, MenuSection, MenuTrigger, Popover, Separator } from "react-aria-components";
import { Button } from "@/design/button";
import { Chevron } from "@/design/chevron";
import { chooseTheme } from "./choose-theme";
import { type Theme, themes } from "./theme";

const THEME_WORDS: Record<Theme, string> = {
  light: "Light",
  dark: "Dark, for the dyno cell",
  device: "As the device",
};

interface PersonMenuProps {
  readonly name: string;
  /** Roles in words: "front desk, manager". */
  readonly duties: string;
  readonly theme: Theme;
  /** A server action that ends the sign-in and sends the person to the sign-in page. */
  readonly onSignOut: () => Promise<void>;
}

/** Who is signed in, and what is theirs: account, look, way out. */
export function PersonMenu({ name, duties, theme, onSignOut }: PersonMenuProps) {
  const [chosen, setChosen] = useState(theme);
  return (
    <MenuTrigger>
      <Button variant="plain" aria-label={`${name}: account, look, sign out`}>
        {name}
        <Chevron />
      </Button>
      <Popover className="popover" placement="bottom end">
        <Menu
          className="options"
          aria-label="Person"
          onAction={(key) => key === "sign-out" && startTransition(onSignOut)}
        >
          <MenuSection>
            <Header className="options-head">{duties}</Header>
            <MenuItem id="account" href="/account" className="option">
              Account
            </MenuItem>
          </MenuSection>
          <Separator className="options-rule" />
          <MenuSection
            selectionMode="single"
            disallowEmptySelection
            selectedKeys={[chosen]}
            onSelectionChange={(keys) => {
              const next = themes.find((candidate) => keys !== "all" && keys.has(candidate));
              if (next === undefined) return;
              setChosen(next);
              chooseTheme(next);
            }}
          >
            <Header className="options-head">Look</Header>
            {themes.map((entry) => (
              <MenuItem key={entry} id={entry} className="option">
                {THEME_WORDS[entry]}
              </MenuItem>
            ))}
          </MenuSection>
          <Separator className="options-rule" />
          <MenuItem id="sign-out" className="option">
            Sign out
          </MenuItem>
        </Menu>
      </Popover>
    </MenuTrigger>
  );
}
