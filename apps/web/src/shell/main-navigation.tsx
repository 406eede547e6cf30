"use client";

import Link from "next/link";
import { usePathname } from "next/navigation";
import { Menu, MenuItem, MenuTrigger, Popover } from "react-aria-components";
import { Button } from "@/design/button";
import { type Destination, isWithin, splitForPhone } from "./navigation";

interface NavigationProps {
  readonly destinations: readonly Destination[];
}

/** The places of the workshop, in words, along the top. */
export function MainNavigation({ destinations }: NavigationProps) {
  return (
    <nav className="navigation" aria-label="Workshop">
      <NavigationLinks destinations={destinations} />
    </nav>
  );
}

/** The same at the foot of a phone; what does not fit stands behind "More". */
export function PhoneNavigation({ destinations }: NavigationProps) {
  const path = usePathname();
  const { shown, more } = splitForPhone(destinations);
  const isInMore = more.some((place) => isWithin(path, place));
  return (
    <nav className="phone-navigation" aria-label="Workshop">
      <NavigationLinks destinations={shown} />
      {more.length > 0 && (
        <MenuTrigger>
          <span className="phone-more" data-current={isInMore || undefined}>
            <Button variant="plain">More</Button>
          </span>
          <Popover className="popover" placement="top end">
            <Menu className="options" aria-label="More places">
              {more.map((place) => (
                <MenuItem key={place.href} id={place.href} href={place.href} className="option">
                  {place.title}
                </MenuItem>
              ))}
            </Menu>
          </Popover>
        </MenuTrigger>
      )}
    </nav>
  );
}

function NavigationLinks({ destinations }: NavigationProps) {
  const path = usePathname();
  return destinations.map((place) => (
    <Link
      key={place.href}
      href={place.href}
      className="navigation-link"
      aria-current={isWithin(path, place) ? "page" : undefined}
    >
      {place.title}
    </Link>
  ));
}
