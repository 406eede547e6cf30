"use client";

import { Menu as AriaMenu, MenuItem, MenuTrigger, Popover } from "react-aria-components";
import { Button, type ButtonVariant } from "./button";
import { Chevron } from "./chevron";
import { useDensity } from "./density";

export interface MenuEntry {
  readonly id: string;
  readonly label: string;
  readonly note?: string;
  /** Where it goes; else `onAction` hears its id. */
  readonly href?: string;
  readonly refusedBecause?: string;
}

interface MenuProps {
  readonly label: string;
  readonly entries: readonly MenuEntry[];
  readonly onAction?: (id: string) => void;
  readonly variant?: ButtonVariant;
}

/** Lesser things that can be done here. */
export function Menu({ label, entries, onAction, variant = "quiet" }: MenuProps) {
  const density = useDensity();
  return (
    <MenuTrigger>
      <Button variant={variant}>
        {label}
        <Chevron />
      </Button>
      <Popover className="popover" placement="bottom end" data-density={density}>
        <AriaMenu className="options" onAction={(key) => onAction?.(String(key))}>
          {entries.map((entry) => (
            <MenuItem
              key={entry.id}
              id={entry.id}
              className="option"
              textValue={entry.label}
              isDisabled={entry.refusedBecause !== undefined}
              {...(entry.href === undefined ? {} : { href: entry.href })}
            >
              {entry.label}
              {(entry.refusedBecause ?? entry.note) && (
                <span className="option-note">{entry.refusedBecause ?? entry.note}</span>
              )}
            </MenuItem>
          ))}
        </AriaMenu>
      </Popover>
    </MenuTrigger>
  );
}
