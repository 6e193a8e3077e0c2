// The libraries of the page with the names that it takes of them, and nothing of ours: the yardstick of `bench script`.
export { Component, createElement, StrictMode, useEffect, useMemo, useState } from 'react'
export { createRoot } from 'react-dom/client'
export { io } from 'socket.io-client'
export {
  array,
  boolean,
  catch,
  discriminatedUnion,
  enum,
  extend,
  gte,
  int,
  iso,
  json,
  literal,
  lte,
  maxLength,
  minLength,
  nullable,
  number,
  object,
  optional,
  regex,
  strictObject,
  string,
  tuple,
  union,
  unknown,
} from 'zod/mini'
export { createStore, useStore } from 'zustand'
