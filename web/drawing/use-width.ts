import { type RefObject, useLayoutEffect, useRef, useState } from 'react';

/** The width of an element in whole pixels, as it is and as it becomes; 0 before it is laid out. */
export const useWidth = <T extends HTMLElement>(): readonly [RefObject<T | null>, number] => {
  const ref = useRef<T>(null);
  const [width, setWidth] = useState(0);
  useLayoutEffect(() => {
    const element = ref.current;
    if (element === null) return undefined;
    const look = (): void => setWidth(Math.floor(element.getBoundingClientRect().width));
    look();
    const observer = new ResizeObserver(look);
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  return [ref, width];
};

/** Whether a media query holds now. */
export const matches = (query: string): boolean => window.matchMedia(query).matches;
