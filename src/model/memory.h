// How the program asks the system for memory while documents are read: in large
// pages, kept to the end. Pages come and go by the megabyte, and each fault costs
// more than filling what it brings. Advice only: results do not depend on it, and
// with another C library than glibc nothing happens.
#pragma once

namespace standin::model {

// Once, at the start of the program, before there are other threads.
void keepMemory();

// At the start of a thread that allocates much. Does nothing without keepMemory(), or
// where the thread was given a heap that another had used.
void useLargePages();

}  // namespace standin::model
