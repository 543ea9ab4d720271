/** The screens of a call by what stands behind `/live`: a post, joining, and the desk. */
import { DeskPage, deskPart } from '../call-desk/desk-page.tsx';
import { Nowhere } from '../frame/in-between.tsx';
import { JoinPage } from './join-page.tsx';
import { OwnPosts } from './own-posts.tsx';
import { PostPage } from './post-page.tsx';
import './call.css';
import './call-touch.css';

export const LiveScreen = ({ path }: { readonly path: readonly string[] }) => {
  const [part, post, ...more] = path;
  if (part === undefined) return <OwnPosts />;
  if (part === 'join' && post === undefined) return <JoinPage />;
  if (part === 'post' && post !== undefined && more.length === 0) {
    return <PostPage key={post} post={post} />;
  }
  if (deskPart(path) !== null) return <DeskPage path={path} />;
  return <Nowhere path={['/live', ...path].join('/')} />;
};
