// Published formulas with the number of their leaves, and where given their extent, each with its
// source. Totals the source does not print are sums by its own rules.
#pragma once

#include <array>

namespace headcap::tests {

struct PublishedFormula {
    const char* formula;
    int leaves;
    const char* extent; // empty: the source gives none
    const char* source;
};

inline constexpr std::array kPublishedFormulas{
    PublishedFormula{"2°: a⁴ A-Z⁸, ²a-b⁸ c⁶", 210, "[8] 1-368, ²1-44",
                     "Noble & Whitesell, sample descriptions (Rare Book School handout)"},
    PublishedFormula{"2°: [A]² B-Y⁴", 86, "[4] 1-32 35-154 [=152] [16]",
                     "Noble & Whitesell, sample descriptions (Rare Book School handout)"},
    PublishedFormula{"8°: A⁴ B-O⁸", 108, "[8] 1-205 [3]", "MHS, The Beehive, Nov. 2013"},
    PublishedFormula{"8°: [A]² B-R⁸", 130, "", "Indiana Historical Society, 12 Oct. 2021"},
    PublishedFormula{"A-D⁶", 24, "48", "Folger, The First Folio's Collation Statement"},
    PublishedFormula{"2°: a⁴ A-O⁸ P¹⁰", 126, "[4], CXXII leaves",
                     "Folger, Signature statements in book cataloging (2016)"},
    PublishedFormula{"8vo: A-H⁴", 32, "[1-2] 3-62 [63-64]", "DCRMR 6.215.44.9"},
    PublishedFormula{"pi1[=B2] A⁸ [B]²(-B2)", 10, "[2 unnumbered (blank)] [1-3] 4-17 [18 (blank)]",
                     "DCRM-L discussion list, 19 Nov. 2012"},
    PublishedFormula{"4°: [asterisk]⁶, [triangle]⁴, [parallel lines]⁴, A-3C⁴", 210,
                     "[14], 192, [4] leaves", "Goucher College ENG 241, Doing desbib"},
    PublishedFormula{
        R"(πA⁶(πA1+1 πA5+1.2) A-2B⁶ 2C² a-g⁶ χ2g⁸ h-v⁶ x⁴ "gg3.4"(± "gg3") ¶-2¶⁶ 3¶1 2a-2f⁶ 2g² "Gg⁶" 2h⁶ 2k-3b⁶)",
        454,
        "[18], 303, [1], 46, 49-100, [2], 69-232, [2], 79-80, [26], 98, [2], 109-156, 257-993 "
        "[i.e. 399], [1] p.",
        "Folger; extent ESTC via earlyprint/epmetadata A11954"},
    PublishedFormula{"a-d⁸", 32, "32 leaves", "BMC III, IA. 11651"},
    PublishedFormula{"a⁸", 8, "8 leaves", "BMC III, IA. 11636"},
    PublishedFormula{"AB⁶", 12, "12 leaves", "BMC III, IA. 12354"},
    PublishedFormula{"A-F⁶·⁶·⁴ G-K⁶·⁴", 52, "52 leaves", "BMC III, IA. 12335"},
    PublishedFormula{"1 × 2 (iv), 3 × 8 (24), 1 × 7 (31), 1 × 9 (40), 11 × 8 (128), 1 × 7 (135), "
                     "11 × 16 (311), 1 × 9 (320) 1 × 2 (322)",
                     322, "", "Bodleian, MS Holkham Gr. 81 (TEI)"},
    PublishedFormula{"pi²(pi1+A⁸)", 10, "", "DCRM-L discussion list, 19 Nov. 2012"},
    PublishedFormula{"πA⁶ (πA1+1) [πB²], ²A-2B⁶ 2C² a-g⁶ χgg⁸ h-v⁶ x⁴ χ1.2 [para.]-2[para.]⁶ "
                     "3[para]¹ aa-ff⁶ gg² Gg⁶ hh⁶ kk-bbb⁶",
                     454, "", "Bodleian First Folio TEI header"},
    PublishedFormula{"πA⁶ (πA1+1, πA5+1.2)²A-2B⁶ 2C² a-g⁶ ²g⁸ h-v⁶ x⁴ 'gg3.4' (±'gg3') "
                     "[para.]-2[para.]⁶ 3[para]¹ 2a-2f⁶ 2g² 2G⁶ 2h⁶ 2k-2v⁶ x⁶ 2y-3b⁶",
                     454, "", "Bodleian First Folio TEI header"},
    PublishedFormula{"π² πA⁴ A-Y⁶ Z⁴, 2B-2Z⁶ *3A-*3D⁶ *3E⁸, 3A-4B⁶ 4C²", 458, "",
                     "Dawson, Studies in Bibliography 4, p. 93"},
    PublishedFormula{"a b⁸ c d⁶", 28, "28 leaves", "BMC III, IA. 11593"},
    PublishedFormula{"A-Z⁴", 92, "", "LD4P ARM, Signature statements"},
    PublishedFormula{"A-D⁴", 16, "", "STCV manual, Collation Formula"},
    PublishedFormula{"[A]² B-2H²", 62, "", "DCRMR 6.215.44.5"},
    PublishedFormula{"A⁴ B-E⁸/⁴ F⁸", 36, "", "DCRM-L discussion list, 16 Sept. 2019"},
    PublishedFormula{"A-F⁴/⁸", 36, "", "DCRM-L discussion list, 16 Sept. 2019 (same message)"},
    PublishedFormula{"[A]⁴(A2 +B⁴(B2 + C⁴))", 12, "", "DCRM-L discussion list, 26 Apr. 2010"},
    PublishedFormula{"[A]⁴ B-C⁴ D² E-G⁴ H²", 28, "", "DCRMR 6.215.44.1"},
    PublishedFormula{
        "pi⁴(-pi4) A-B⁶ C⁴ a⁶ b⁸, ²A-S⁶ T-V⁴ 2A-2U⁶ 3A-3U⁶ 4A-4U⁶ 5A-5Z⁶ a⁶ 2a⁶ *⁶ **⁸", 673, "",
        "DCRMR 6.215.44.1"},
    PublishedFormula{"pi⁴ a-i⁸ chi²", 78, "", "DCRMR 6.215.44.1"},
    PublishedFormula{"[1-4⁸][5-6⁶][7⁸]", 52, "", "DCRMR 6.215.44.1"},
    PublishedFormula{"1-30⁸ 31⁴ 32-35⁸ (31₄, 35₈ blank)", 276, "", "DCRMR 6.215.44.1"},
    PublishedFormula{"A-F⁸ G⁶ a-z⁸ &⁸ [con]⁸ [rum]⁸ 2a-2y⁸", 438, "", "DCRMR 6.215.44.2"},
    PublishedFormula{"[dagger]⁸ a-q⁸", 136, "", "DCRMR 6.215.44.2"},
    PublishedFormula{"*⁸ [double dagger]⁸ A-M⁸ N⁴", 116, "", "DCRMR 6.215.44.2"},
    PublishedFormula{"[fist]⁴ A-D⁸ E⁸(±E2) F-G⁸ H⁴ I²", 66, "", "DCRMR 6.215.44.2"},
    PublishedFormula{"[fleuron]⁸ A⁴ B-Y⁸", 180, "", "DCRMR 6.215.44.2"},
    PublishedFormula{"[Maltese cross]⁶ A-X⁸ 2A-2P⁸ 2Q⁴", 298, "", "DCRMR 6.215.44.2"},
    PublishedFormula{"[par.]⁸ A⁸(-A1) B-E⁸ F²", 49, "", "DCRMR 6.215.44.2"},
    PublishedFormula{"[par.]⁴ 2[sec.]⁴ 3[sec.]² A-3P⁴", 254, "", "DCRMR 6.215.44.2"},
    PublishedFormula{"pi⁴ A-C⁴ chi² D-Z⁴", 98, "", "DCRMR 6.215.44.3"},
    PublishedFormula{"^piA⁴ A-D⁴ ^chiD⁴ E-F⁴", 32, "", "DCRMR 6.215.44.3"},
    PublishedFormula{"A-C⁸ G-U⁴ W⁴ X-Y⁴", 92, "", "DCRMR 6.215.44.35"},
    PublishedFormula{"[A]⁸ B-I⁸ J⁸ K-U⁸ V⁸ W⁸ X-Z⁸ ²A-B⁸ chi²", 226, "", "DCRMR 6.215.44.35"},
    PublishedFormula{"[A]⁴ B-2G⁴ ²2E-2G⁴. Gathered in twelves, with three separate but consecutive "
                     "signatures within each gathering",
                     132, "", "DCRMR 6.215.44.4"},
    PublishedFormula{"a⁴ e⁴ i⁴ A-P⁴ R-7A⁴ (gathering P also signed Q)", 564, "",
                     "DCRMR 6.215.44.5"},
    PublishedFormula{"A¹²; also signed [1]⁶ 2⁶", 12, "", "DCRMR 6.215.44.5"},
    PublishedFormula{"[A]² B-2H². Gatherings B-2H also signed No. 2-No. 31", 62, "",
                     "DCRMR 6.215.44.5"},
    PublishedFormula{"(in Hebrew numerals): 1-32⁴ 1-27⁶ 1-18⁶", 398, "", "DCRMR 6.215.44.6"},
    PublishedFormula{"(in Hindu-Arabic numerals): 1-12⁸", 96, "", "DCRMR 6.215.44.6"},
    PublishedFormula{"(in Church Slavic Cyrillic numerals): 1-25⁸ 26⁶ 1-22⁸ 23⁶(-23₆) 24⁸", 395, "",
                     "DCRMR 6.215.44.6"},
    PublishedFormula{"(in parallel Hebrew and arabic numerals): pi⁸ 1-4⁸", 40, "",
                     "DCRMR 6.215.44.6"},
    PublishedFormula{"(in Hebrew characters): 2-3⁸", 16, "", "DCRMR 6.215.44.6"},
    PublishedFormula{"pi1 α-γ² Α-2Λ²", 77, "", "DCRMR 6.215.44.7"},
    PublishedFormula{"(in Greek characters): pi1 a-g² A-2L²", 77, "", "DCRMR 6.215.44.7"},
    PublishedFormula{"ʼ-sh⁸ (in Hebrew characters), a-k⁸", 248, "", "DCRMR 6.215.44.75"},
    PublishedFormula{"А-Ѵ² [=41], 2А-2Ѵ² [=41], 3А-3Ѿ² [=24]", 212, "", "DCRMR 6.215.44.8"},
    PublishedFormula{"(right to left):  ):(⁸ A-2Y⁸", 368, "", "DCRMR 6.215.44.85"},
    PublishedFormula{
        "Collation: 8vo: A-H⁴; 32 leaves: p. [1-2] 3-62 [63-64]; $3(-H3) signed. H4 blank", 32, "",
        "DCRMR 6.215.44.9"},
    PublishedFormula{"A-C⁴ D⁴(-D3) E-F⁴", 23, "",
                     R"(DCRM(B) 7B9.1 as quoted by Folgerpedia, "Signature statements")"},
    PublishedFormula{"A-2Z⁸, ²A-M⁸", 464, "",
                     R"(DCRM(B) 7B9.1 as quoted by Folgerpedia, "Signature statements")"},
    PublishedFormula{"A⁸ B⁸(B2+ X⁴) C-2P⁸", 308, "", "ESTC via earlyprint/epmetadata A12198"},
    PublishedFormula{"[par.]⁴ 2[par.]⁴ (2[par.]1 + chi¹) 3[par.]² A-2D⁴ ²2C-2D⁴ 2G-3H⁴", 227, "",
                     "ESTC via earlyprint/epmetadata A01045"},
    PublishedFormula{"A⁴ (-A1.4) B-G⁴ g1 (=A4) ²G-I⁴", 39, "",
                     "ESTC via earlyprint/epmetadata A00958"},
    PublishedFormula{"pi1 (=2L6) A-2K¹² 2L⁶ (-2L6); A-L¹²", 534, "",
                     "ESTC via earlyprint/epmetadata A28067"},
    PublishedFormula{
        "pi² [par.]⁴ 2[par.]² 3[par.]1 A² B-C⁴ 2a-2g⁴ 2h² [cross]⁴ 2[cross]² ²[cross]1 ²A-3Q⁴ 3R²",
        306, "", "ESTC via earlyprint/epmetadata A72146"},
    PublishedFormula{"A⁸ *⁴ B-2G⁸ 2H⁷", 251, "[24] p., 239 leaves",
                     "ESTC via earlyprint/epmetadata A10444"},
    PublishedFormula{"a-z·⁴ [et]⁶ [con] [rum]⁴", 158, "[316] p.",
                     "ESTC via earlyprint/epmetadata A03936"},
    PublishedFormula{"A-E⁴ F⁴ (+-F4 [=K4]) G-I⁴ K⁴ (-K4)", 39, "[78] p.",
                     "ESTC via earlyprint/epmetadata A03248"},
};

} // namespace headcap::tests
