// Poppler's process-wide state: set up once, and its error messages sorted by
// thread. Private to extractors/poppler/.
//
//     std::vector<std::string> messages;
//     { MessageSink sink(messages); document.displayPage(...); }
#pragma once

#include <cstdint>
#include <string>
#include <vector>

namespace standin::poppler {

// Sets Poppler up on the first call; later calls, from any thread, cost nothing.
void ensureLibrary();

// While it lives, what Poppler complains of in this thread is collected in
// `messages`: each text once (numbers apart), at most kMaxMessages. Without a
// sink the complaints are dropped; never does anything reach standard error.
class MessageSink {
public:
    static constexpr std::size_t kMaxMessages = 12;

    explicit MessageSink(std::vector<std::string>& messages);
    MessageSink(MessageSink const&) = delete;
    MessageSink& operator=(MessageSink const&) = delete;
    ~MessageSink();

private:
    std::vector<std::string>* m_previous;
};

// How often Poppler has complained in this thread, with or without a sink.
[[nodiscard]] std::uint64_t complaintsSoFar();

}  // namespace standin::poppler
