import type { MouseEvent, ReactNode } from 'react';
import type { Address, Place } from './address.ts';
import { writeAddress } from './address.ts';
import { goToAddress, useAddress } from './use-address.ts';

type LinkProps = {
  readonly to: Place;
  /** Another house or show; else the one that is shown. */
  readonly among?: Pick<Address, 'house' | 'show'>;
  readonly className?: string;
  readonly isHere?: boolean;
  readonly name?: string;
  readonly tabIndex?: number;
  /** Whether it fills a cell of a grid, so that arrows reach it. */
  readonly isCell?: boolean;
  readonly children: ReactNode;
};

const isPlainClick = (event: MouseEvent): boolean =>
  event.button === 0 && !event.metaKey && !event.ctrlKey && !event.shiftKey && !event.altKey;

/** A link that a person can also open beside, copy, or send. */
export const Link = ({
  to,
  among,
  className,
  isHere,
  name,
  tabIndex,
  isCell,
  children,
}: LinkProps) => {
  const address = useAddress();
  const target: Address = { ...address, ...among, place: to };
  return (
    <a
      href={writeAddress(target)}
      className={className}
      aria-current={isHere ? 'page' : undefined}
      aria-label={name}
      tabIndex={tabIndex}
      data-cell={isCell ? '' : undefined}
      onClick={(event) => {
        if (!isPlainClick(event)) return;
        event.preventDefault();
        goToAddress(target);
      }}
    >
      {children}
    </a>
  );
};
