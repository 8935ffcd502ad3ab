#include "compare/wording_pairing.h"

#include <algorithm>
#include <chrono>
#include <random>

#include <gtest/gtest.h>

#include <fmt/format.h>

#include "compare/wording_classes.h"

namespace standin::compare {
namespace {

std::vector<model::Sentence> sheet(std::vector<std::string> const& texts) {
    std::vector<model::Sentence> sentences;
    for (std::string const& text : texts) {
        model::Sentence sentence;
        sentence.text = text;
        sentences.push_back(std::move(sentence));
    }
    return sentences;
}

std::string shown(std::vector<WordingPair> const& pairs) {
    std::string text;
    for (WordingPair const& pair : pairs) {
        if (!text.empty()) text += " ";
        text += fmt::format("{}-{}", pair.reference, pair.candidate);
        if (pair.referenceCount > 1) text += fmt::format("(r{})", pair.referenceCount);
        if (pair.candidateCount > 1) text += fmt::format("(c{})", pair.candidateCount);
        if (!pair.equal) text += "*";
    }
    return text;
}

std::string const kCharge = "Charging stops when the cell voltage exceeds the detection level.";
std::string const kRelease = "The state is released when the charger is removed.";
std::string const kDelay = "The detection delay is fixed inside the device at 1.2 s.";
std::string const kPad = "Leave the exposed pad open or connect it to the substrate.";

TEST(WordingPairing, aCopyPairsEverySentenceWithItself) {
    auto const text = sheet({kCharge, kRelease, kRelease, kDelay, "NC", "NC", kPad});
    auto const pairs = pairSentences(text, text);
    ASSERT_EQ(pairs.size(), text.size());
    for (std::size_t i = 0; i < pairs.size(); ++i) EXPECT_EQ(pairs[i], (WordingPair{static_cast<int>(i), static_cast<int>(i), 1, 1, true}));
}

TEST(WordingPairing, oneChangedNumberIsOnePairThatDiffers) {
    auto const reference = sheet({kCharge, kDelay, kRelease});
    auto const candidate = sheet({kCharge, "The detection delay is fixed inside the device at 1.3 s.", kRelease});
    EXPECT_EQ(shown(pairSentences(reference, candidate)), "0-0 1-1* 2-2");
}

TEST(WordingPairing, movedSentencesArePairedWhereverTheyStand) {
    auto const reference = sheet({kCharge, kRelease, kDelay, kPad});
    auto const candidate = sheet({kPad, kDelay, kCharge, kRelease});
    EXPECT_EQ(shown(pairSentences(reference, candidate)), "0-2 1-3 2-1 3-0");
}

TEST(WordingPairing, aMovedAndChangedSentenceIsNotStolenByItsNeighbour) {
    auto const reference = sheet({"The delay of output A is 5 ms at room temperature.", kRelease, kPad, kCharge});
    auto const candidate = sheet({"The gain of output A is 9 dB at room temperature.", kRelease, kPad, kCharge, "The delay of output A is 6 ms at room temperature."});
    EXPECT_EQ(shown(pairSentences(reference, candidate)), "0-4* 1-1 2-2 3-3");
}

TEST(WordingPairing, dividedAndJoinedSentencesStayEqual) {
    auto const reference = sheet({kCharge + " " + kRelease, kDelay, kPad, "Tail one."});
    auto const candidate = sheet({kCharge, kRelease, kDelay + " " + kPad, "Tail one."});
    EXPECT_EQ(shown(pairSentences(reference, candidate)), "0-0(c2) 1-2(r2) 3-3");
}

TEST(WordingPairing, aDividedAndChangedSentenceTakesItsNeighbourIn) {
    auto const reference = sheet({"Before.", kCharge + " It restarts after a delay of 20 ms when the load is off.", "Behind."});
    auto const candidate = sheet({"Before.", kCharge, "It restarts after a delay of 25 ms when the load is off.", "Behind."});
    EXPECT_EQ(shown(pairSentences(reference, candidate)), "0-0 1-1(c2)* 2-3");
}

TEST(WordingPairing, aListThatRunsTogetherIsOnePairWithItsEntries) {
    std::vector<std::string> const entries{"• Detection level: 4.280 V, accuracy ±25 mV", "• Release level: 3.000 V, accuracy ±70 mV", "• Power down: available", "• Package: six pins"};
    auto const reference = sheet({kCharge, entries[0], entries[1], entries[2], entries[3], kRelease});
    auto const equal = sheet({kCharge, "Detection level: 4.280 V, accuracy ±25 mV Release level: 3.000 V, accuracy ±70 mV Power down: available Package: six pins", kRelease});
    EXPECT_EQ(shown(pairSentences(reference, equal)), "0-0 1-1(r4) 5-2");
    auto const changed = sheet({kCharge, "Detection level: 4.250 V, accuracy ±25 mV Release level: 3.000 V, accuracy ±70 mV Power down: missing Package: six pins", kRelease});
    EXPECT_EQ(shown(pairSentences(reference, changed)), "0-0 1-1(r4)* 5-2");
    EXPECT_EQ(shown(pairSentences(changed, reference)), "0-0 1-1(c4)* 2-5");
}

TEST(WordingPairing, sentencesOfOneSheetOnlyStayAlone) {
    auto const reference = sheet({kCharge, kRelease});
    auto const candidate = sheet({kCharge, "Vehicles need another grade of this product family.", kRelease});
    EXPECT_EQ(shown(pairSentences(reference, candidate)), "0-0 1-2");
}

// Headings of two makers look alike letter by letter and mean different things.
TEST(WordingPairing, twoMakersTextsNeedMoreInCommon) {
    auto const reference = sheet({kCharge, "Typical characteristics", kRelease});
    auto const candidate = sheet({kCharge, "Thermal characteristics", kRelease});
    EXPECT_EQ(shown(pairSentences(reference, candidate, Origin::OneText)), "0-0 1-1* 2-2");
    EXPECT_EQ(shown(pairSentences(reference, candidate, Origin::TwoTexts)), "0-0 2-2");
}

TEST(WordingPairing, shortListEntriesBetweenEqualOnesArePaired) {
    auto const reference = sheet({kCharge, "Typ. 4.28 V", kRelease});
    auto const candidate = sheet({kCharge, "Typ. 4.38 V", kRelease});
    EXPECT_EQ(shown(pairSentences(reference, candidate)), "0-0 1-1* 2-2");
}

TEST(WordingPairing, eachSentenceIsUsedOnceOnRandomSheets) {
    std::mt19937 random(3);
    std::vector<std::string> const nouns{"delay", "gain", "level", "output", "load", "cell", "noise"};
    for (int round = 0; round < 60; ++round) {
        std::vector<std::string> texts;
        for (int i = 0; i < 40; ++i) {
            texts.push_back(fmt::format("The {} of the {} is {} when the {} is {}.", nouns[random() % 7], nouns[random() % 7], random() % 5, nouns[random() % 7], random() % 3));
        }
        std::vector<std::string> changed = texts;
        std::shuffle(changed.begin(), changed.end(), random);
        changed.resize(35);
        for (int i = 0; i < 5; ++i) changed[random() % 35] += " More.";
        auto const reference = sheet(texts);
        auto const candidate = sheet(changed);
        std::vector<int> usedReference(texts.size());
        std::vector<int> usedCandidate(changed.size());
        for (WordingPair const& pair : pairSentences(reference, candidate)) {
            for (int i = 0; i < pair.referenceCount; ++i) EXPECT_EQ(++usedReference.at(static_cast<std::size_t>(pair.reference + i)), 1);
            for (int j = 0; j < pair.candidateCount; ++j) EXPECT_EQ(++usedCandidate.at(static_cast<std::size_t>(pair.candidate + j)), 1);
        }
    }
}

TEST(WordingPairing, repetitiveSheetsStayFast) {
    std::vector<std::string> texts;
    std::vector<std::string> others;
    for (int i = 0; i < 8000; ++i) {
        texts.push_back(fmt::format("The register field of channel is set to its level {}.", i % 7));
        others.push_back(fmt::format("The register field of channel is set to its limit {}.", i % 5));
    }
    auto const start = std::chrono::steady_clock::now();
    auto const pairs = pairSentences(sheet(texts), sheet(others));
    auto const took = std::chrono::duration_cast<std::chrono::milliseconds>(std::chrono::steady_clock::now() - start).count();
    EXPECT_LE(pairs.size(), texts.size());
    EXPECT_LT(took, 20000) << "far from quadratic: 64 million likenesses would take minutes";
}

// Lamps and bells, in any order and with any of them left out.
TEST(WordingPairing, ExchangedSheetsGiveTheSamePairs) {
    static constexpr char const* kWords[] = {"lamp", "bell", "light", "timer", "charge", "level", "release", "voltage", "output", "supply", "delay", "current"};
    std::mt19937 random(11);
    auto const list = [&] {
        std::vector<std::string> texts(1 + random() % 9);
        for (std::string& text : texts) {
            text = "The";
            for (std::size_t k = 0, count = 3 + random() % 5; k < count; ++k) text += fmt::format(" {}", kWords[random() % std::size(kWords)]);
        }
        return sheet(texts);
    };
    for (int round = 0; round < 500; ++round) {
        auto const reference = list();
        auto const candidate = list();
        for (Origin const origin : {Origin::OneText, Origin::TwoTexts}) {
            auto const pairs = pairSentences(reference, candidate, origin);
            auto turned = pairSentences(candidate, reference, origin);
            for (WordingPair& pair : turned) pair = {pair.candidate, pair.reference, pair.candidateCount, pair.referenceCount, pair.equal};
            std::sort(turned.begin(), turned.end(), [](WordingPair const& a, WordingPair const& b) { return a.reference < b.reference; });
            EXPECT_EQ(shown(pairs), shown(turned)) << round;
        }
    }
}

}  // namespace
}  // namespace standin::compare
